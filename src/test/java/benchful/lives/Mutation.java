package benchful.lives;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Changes a sheet in one place or two at once: as a slip of the hand, another program or somebody unfriendly would, which is mostly
 * refused; or gently, as a tutor would who tries another number, which mostly still says a class and is planned.
 */
final class Mutation {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Chance chance;

    Mutation(Chance chance) {
        this.chance = chance;
    }

    /** @param sheet is changed */
    void change(ObjectNode sheet) {
        changeTwiceAtMost(sheet, this::change);
    }

    /** @param sheet is changed so that it most likely still says a class */
    void changeGently(ObjectNode sheet) {
        changeTwiceAtMost(sheet, this::nudge);
    }

    private void changeTwiceAtMost(ObjectNode sheet, Consumer<JsonNode> change) {
        int changes = chance.between(0, 2);
        for (int i = 0; i < changes; i++) {
            List<JsonNode> places = new ArrayList<>();
            containers(sheet, places);
            change.accept(chance.of(places));
        }
    }

    private static void containers(JsonNode node, List<JsonNode> found) {
        if (node.isContainerNode()) {
            found.add(node);
            node.forEach(n -> containers(n, found));
        }
    }

    private void change(JsonNode place) {
        if (place instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.isEmpty() || chance.once(12) ? key() : chance.of(names);
            if (chance.once(8)) {
                object.remove(name);
            } else {
                object.set(name, value());
            }
        } else if (place instanceof ArrayNode list && !list.isEmpty()) {
            int at = chance.between(0, list.size() - 1);
            switch (chance.between(0, 3)) {
                case 0 -> list.remove(at);
                case 1 -> list.insert(at, list.get(at).deepCopy());
                case 2 -> list.set(at, value());
                default -> list.add(value());
            }
        }
    }

    /** Another order, one thing less, or another amount where an amount stood. */
    private void nudge(JsonNode place) {
        if (place instanceof ArrayNode list && list.size() > 1) {
            int at = chance.between(0, list.size() - 1);
            list.insert(chance.between(0, list.size() - 1), list.remove(at));
        } else if (place instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = chance.of(names);
            JsonNode value = object.get(name);
            if (value.isNumber()) {
                object.put(name, value.isInt() ? value.intValue() + chance.of(-1, 1, 1, 7) : value.doubleValue() / 2);
            } else if (value.isBoolean()) {
                object.put(name, !value.booleanValue());
            } else if (value.asText().matches("\\d.*")) {
                object.put(name, chance.of("1", "2", "9", "0.", "") + value.asText());
            }
        }
    }

    private String key() {
        return chance.of("", "name", "__proto__", "~1", "a/b", "unknown", "x".repeat(300), "结", "steps");
    }

    private JsonNode value() {
        return switch (chance.between(0, 9)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.numberNode(chance.of(0, -1, 1, 2_147_483_647, 1_000_000));
            case 2 -> NODES.numberNode(new BigDecimal(chance.of("1e30", "-0.0000000001", "0.1234567890123456789", "9999999999999999999", "1e-30")));
            case 3 -> NODES.booleanNode(chance.once(2));
            case 4 -> NODES.objectNode();
            case 5 -> NODES.arrayNode();
            case 6 -> NODES.objectNode().put("name", "x").put("length", "1 m");
            case 7 -> NODES.textNode(chance.words(20_000));
            case 8 -> NODES.textNode(chance.of("1 km", "999999999999 m", "1e5 mm", "-3 cm", "0 pcs", "1/0", "length / 0", "2 ^ 999", "sqrt(-1)", "((((", "1 m * 1 m", "NaN"));
            default -> NODES.textNode(chance.of("2027-02-30", "0000-00-00", "9999-12-31", "24:00", "23:59", "99999 d", "1 h 99999999 min", "-5 min", "XXX", "\u0000", "\uD800", "", " "));
        };
    }
}
