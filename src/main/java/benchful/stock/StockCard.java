package benchful.stock;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.OfferRow;
import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import benchful.web.Paged;
import benchful.web.Uses;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the page of a material shows: what lies on the shelf, where it is bought and used, and how it moved. */
@TemplateData
public record StockCard(
        long id, boolean sample, MaterialSpec sheet, Balance balance, boolean low, List<OfferRow> offers, List<Uses.Use> uses, List<Variant> variants, Link material,
        Paged<MovementRow> movements, List<Lying> offcuts, SpecForm form, SpecForm adding) {

    static StockCard of(Material m, Balance balance, List<Uses.Use> uses, Paged<MovementRow> movements, List<Offcut> offcuts, SpecForm form, SpecForm adding, LocalDate today) {
        return new StockCard(m.id(), m.sample(), m.toSpec(), balance, m.low(), m.sold().stream().map(o -> OfferRow.of(o, today)).toList(), uses, m.variants().stream().map(Variant::of).toList(), Link.of(m.material()), movements,
                offcuts.stream().map(Lying::of).toList(), form, adding);
    }

    /** A piece of known size on the shelf, and the class it was left of. */
    @TemplateData
    public record Lying(long id, String size, long fromClass) {
        static Lying of(Offcut o) {
            return !o.readable() ? new Lying(o.id(), "of a size that can't be read: take it off the list", o.fromClass) : new Lying(o.id(), o.piece().width() == null ? Formats.measured(o.piece().length()) : Formats.words(o.piece().sheet()), o.fromClass);
        }
    }

    /** One of its variants, and what lies of it on the shelf. */
    @TemplateData
    public record Variant(long id, String word, String onHand) {
        static Variant of(Material m) {
            return new Variant(m.id(), m.toSpec().variant(), Formats.withUnit(m.onHand()));
        }
    }

    /** The material that it is a variant of. */
    @TemplateData
    public record Link(long id, String name) {
        static Link of(Material m) {
            return m == null ? null : new Link(m.id(), m.name());
        }
    }

    public String address() {
        return "/materials/" + id;
    }

    public String onHand() {
        return Formats.withUnit(balance.onHand());
    }

    public String free() {
        return Formats.withUnit(balance.free());
    }

    /** What is promised to classes; null for nothing. */
    public String reserved() {
        Quantity reserved = balance.onHand().minus(balance.free());
        return reserved.signum() == 0 ? null : Formats.withUnit(reserved);
    }

    /** Null where none is set. */
    public String minimum() {
        return sheet.minimum() == null ? null : Formats.withUnit(sheet.minimum());
    }

    /** "10 % for beginner groups, 5 % for improver groups"; null where nothing is added. */
    public String waste() {
        Map<SkillLevel, BigDecimal> waste = sheet.waste();
        String words = Stream.of(SkillLevel.values())
                .filter(waste::containsKey)
                .map(level -> "%s %% for %s groups".formatted(Formats.number(waste.get(level), 2), Formats.word(level)))
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? null : words;
    }

    /** The chance with which all students are to finish, in percent; null where the waste is a plain allowance. */
    public String confidence() {
        return sheet.confidence() == null ? null : Formats.number(sheet.confidence().movePointRight(2), 2) + " %";
    }

    public String hazards() {
        return sheet.hazards().isEmpty() ? null : String.join(", ", sheet.hazards());
    }

    public String amountHint() {
        return "For a count what you found, else what came or went, such as 5 %s.".formatted(Formats.words(sheet.unit()));
    }

    public List<String> kinds() {
        return List.of("received", "counted", "spoilt", "used", "packed", "returned");
    }
}
