package benchful.web.forms;

import benchful.core.Fault;
import benchful.core.quantity.WrittenPrice;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * The prices of a sheet that were typed as more than a number: with their currency, or with thousands parted. The number is taken where
 * the currency is the one that is counted in there; where it is another or not known, that is a fault and what was typed stays.
 */
public final class TypedPrices {
    private final Map<String, WrittenPrice> prices = new TreeMap<>();

    private TypedPrices() {}

    static TypedPrices in(JsonNode written, SpecSchema schema) {
        TypedPrices typed = new TypedPrices();
        typed.gather(written, "", schema);
        return typed;
    }

    private void gather(JsonNode node, String at, SpecSchema schema) {
        if (node.isObject()) {
            node.properties().forEach(e -> gather(e.getValue(), JsonPointers.below(at, e.getKey()), schema));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                gather(node.get(i), at + "/" + i, schema);
            }
        } else if (node.isTextual()) {
            WrittenPrice.of(node.textValue()).filter(price -> !price.plain() && schema.isPrice(at)).ifPresent(price -> prices.put(at, price));
        }
    }

    /** The sheet with the numbers of its prices. */
    JsonNode numbers(JsonNode written) {
        return with(written, price -> price.amount() == null ? TextNode.valueOf(price.written()) : DecimalNode.valueOf(price.amount()));
    }

    /** The sheet with its prices as they were typed. */
    JsonNode asTyped(JsonNode tree) {
        return with(tree, price -> TextNode.valueOf(price.written()));
    }

    private JsonNode with(JsonNode tree, Function<WrittenPrice, JsonNode> value) {
        if (prices.isEmpty()) {
            return tree;
        }
        JsonNode copy = tree.deepCopy();
        prices.forEach((at, price) -> {
            int key = at.lastIndexOf('/') + 1;
            JsonNode parent = copy.at(at.substring(0, key - 1));
            if (parent instanceof ObjectNode map) {
                map.set(JsonPointers.unescaped(at.substring(key)), value.apply(price));
            } else if (parent instanceof ArrayNode list) {
                list.set(Integer.parseInt(at.substring(key)), value.apply(price));
            }
        });
        return copy;
    }

    /** @param coin the code of the currency that is counted in at a place of a sheet; nothing where that is not known */
    List<Fault> faults(JsonNode tree, BiFunction<JsonNode, String, Optional<String>> coin) {
        List<Fault> faults = new ArrayList<>();
        prices.forEach((at, price) -> coin.apply(tree, at).map(price::unfit)
                .orElseGet(() -> price.amount() != null && price.currencies().isEmpty() ? Optional.empty() : Optional.of("“%s”: it is not known yet in which currency this is counted. Give a number alone, such as 4.50.".formatted(price.written())))
                .ifPresent(detail -> faults.add(new Fault(at, detail))));
        return faults;
    }

    /** The currency that the sheet itself names for a place: the nearest about it, or that of the supplier who is named there, where the sheet has them. */
    static Optional<String> named(JsonNode tree, String place) {
        String supplier = null;
        for (String at = place; !at.isEmpty(); ) {
            at = at.substring(0, at.lastIndexOf('/'));
            JsonNode about = tree.at(at);
            supplier = supplier == null && about.path("supplier").isTextual() ? about.path("supplier").textValue().strip() : supplier;
            Optional<String> found = Stream.concat(Stream.of(about), sellers(about, supplier)).map(n -> n.path("currency")).filter(JsonNode::isTextual).map(n -> n.textValue().strip()).findFirst();
            if (found.isPresent()) {
                return found.map(code -> code.toUpperCase(Locale.ROOT));
            }
        }
        return Optional.empty();
    }

    /** What a field of this key says that is beside a place, or about it; nothing where there is none. */
    public static Optional<String> nearest(JsonNode tree, String place, String key) {
        for (String at = place; !at.isEmpty(); ) {
            at = at.substring(0, at.lastIndexOf('/'));
            if (tree.at(at).path(key).isTextual()) {
                return Optional.of(tree.at(at).path(key).textValue().strip());
            }
        }
        return Optional.empty();
    }

    private static Stream<JsonNode> sellers(JsonNode about, String name) {
        return StreamSupport.stream(about.path("suppliers").spliterator(), false).filter(s -> s.path("name").asText().strip().equals(name));
    }
}
