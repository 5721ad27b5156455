package benchful.stock.sources;

import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.web.forms.fields.CurrencyCode;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is said of materials that are missing, a row each.
 *
 * @param currency ISO 4217 code of the plan that misses them, in which whoever is new sells; null where it has none
 */
@Spec(name = "sources-1", title = "Where materials come from that are missing")
public record SourcesSpec(@CurrencyCode String currency, @Length(most = 500) List<Source> sources) {
    public SourcesSpec {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /**
     * One material; of a row that says nothing more, nothing is known yet.
     *
     * @param missing how much, in words
     * @param found what is here and was not written down
     * @param seller who sells it; null for a shop nearby
     * @param holds what is in one pack
     * @param price of one pack before tax
     */
    public record Source(
            @Required @Filled(120) @Mend("Name the material.") String material,
            @ShortText String missing,
            Quantity found,
            @Length(most = 120) @Mend("Name the seller in at most 120 characters.") String seller,
            Quantity holds,
            @Price BigDecimal price) {
        boolean says() {
            return found != null || sold();
        }

        boolean sold() {
            return Stream.of(seller, holds, price).anyMatch(Objects::nonNull);
        }

        private Stream<Fault> faults(String at) {
            return Stream.of(
                    sold() && holds == null ? new Fault(at + "/holds", "Say what is in one pack, such as 50 g or 2 sheets 70 x 50 cm.") : null,
                    sold() && price == null ? new Fault(at + "/price", "Say what one pack costs, such as 4.50. An estimate will do.") : null,
                    found != null && found.signum() <= 0 ? new Fault(at + "/found", "Give an amount above 0, or leave this empty.") : null).filter(Objects::nonNull);
        }
    }

    List<Fault> faults() {
        return IntStream.range(0, sources.size()).boxed().flatMap(i -> sources.get(i).faults("/sources/" + i)).toList();
    }
}
