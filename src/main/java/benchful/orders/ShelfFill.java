package benchful.orders;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.TermRequest;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What should still lie on the shelf when classes have taken theirs, as one more thing to buy for. */
final class ShelfFill {
    private static final String TITLE = "the least that should lie on the shelf";

    private ShelfFill() {}

    /**
     * One piece, made of the least of each material that has one; none where no material has. What has enough, and is taken by
     * nobody, needs nothing and is passed over.
     *
     * @param taken names of materials that classes take
     */
    static Optional<TermRequest.Part> part(Collection<String> taken) {
        List<MaterialSpec> kept = Material.toFill(taken).stream().flatMap(m -> m.readable().stream()).filter(m -> m.minimum() != null && m.minimum().signum() > 0).toList();
        return kept.isEmpty() ? Optional.empty() : Optional.of(new TermRequest.Part(TITLE, file(new CatalogueSpec(kept, List.of()))));
    }

    static ClassFile file(CatalogueSpec kept) {
        ProjectSpec shelf = ProjectSpecBuilder.builder().name(TITLE).craft("shelf").level(SkillLevel.EXPERIENCED)
                .sizes(List.of(new Size("one", Map.of()))).materials(kept.materials().stream().map(ShelfFill::line).toList()).build();
        ClassSetup once = ClassSetup.plain(TITLE, List.of(), 1, SkillLevel.EXPERIENCED, Map.of(), null);
        return new ClassFile(shelf, once, null, kept.materials(), kept.suppliers());
    }

    /** What is cut to length is kept in whole stock lengths, of the shortest that is sold. */
    private static MaterialLine line(MaterialSpec material) {
        Optional<Quantity> length = material.minimum().unit().dimension().equals(Dimension.LENGTH)
                ? material.offers().stream().map(ShelfFill::each).min(Quantity::compareTo) : Optional.empty();
        return length.map(each -> line(material, words(each), lengths(material.minimum(), each)))
                .orElseGet(() -> line(material, words(material.minimum()), null));
    }

    private static MaterialLine line(MaterialSpec material, String amount, String pieces) {
        return MaterialLine.of(material.name(), amount).withPieces(pieces).withShared(true).withInKit(false);
    }

    private static Quantity each(Offer offer) {
        int lengths = offer.lengths() == null ? 1 : offer.lengths();
        return new Quantity(offer.holds().amount().divide(BigDecimal.valueOf(lengths), Quantity.PRECISION), offer.holds().unit());
    }

    private static String lengths(Quantity least, Quantity each) {
        return least.in(each.unit()).amount().divide(each.amount(), 0, RoundingMode.CEILING).toPlainString();
    }

    /** As a formula reads it: pieces are a bare number. */
    private static String words(Quantity amount) {
        return amount.unit() == Unit.PIECE ? amount.amount().toPlainString() : amount.toString();
    }
}
