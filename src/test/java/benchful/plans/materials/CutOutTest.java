package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.StockPiece;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.SmallClass;
import benchful.plans.materials.kits.Kit;
import benchful.projects.MaterialLine;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a plan tells of what is cut, of what nobody sells, and of what the class takes. */
class CutOutTest {
    /** Two of 3 m from two of 5 m: 2 m fall off each, too short for another. Of the third a piece of 3 m is kept. */
    @Test
    void tellsWhichLengthsAreOpenedAndWhatIsKept() {
        CutOut out = CutOut.of(only(SmallClass.of(2).line(MaterialLine.of("Cord", "3 m").withPieces("1")).sold("Cord", "5 m", "2.00"))).orElseThrow();
        assertThat(out).isEqualTo(new CutOut(List.of(length("5 m"), length("5 m")), List.of(), q("6 m")));
        CutOut kept = CutOut.of(only(SmallClass.of(1).line(MaterialLine.of("Cord", "3 m").withPieces("1")).sold("Cord", "6 m", "2.00"))).orElseThrow();
        assertThat(kept).isEqualTo(new CutOut(List.of(length("6 m")), List.of(length("3 m")), q("3 m")));
    }

    /** One of 40 x 30 mm from a sheet as wide: of the 100 mm 60 are left, on which another lies; of 50 mm 10 are, on which none does. */
    @Test
    void tellsWhichSheetsAreOpenedAndWhatIsKept() {
        assertThat(CutOut.of(only(panel("100 mm"))).orElseThrow()).isEqualTo(new CutOut(List.of(sheet("100 mm", "30 mm")), List.of(sheet("60 mm", "30 mm")), q("12 cm2")));
        assertThat(CutOut.of(only(panel("50 mm"))).orElseThrow()).isEqualTo(new CutOut(List.of(sheet("50 mm", "30 mm")), List.of(), q("12 cm2")));
    }

    private static SmallClass panel(String length) {
        Extent size = new Extent(q(length), q("30 mm"));
        return SmallClass.of(1).line(MaterialLine.of("Copper", "40 mm").withWidth("30 mm").withPieces("1"))
                .catalogued(MaterialSpec.of("Copper", Unit.CM2).withOffers(List.of(Offer.of("Loft", size.area(), BigDecimal.ONE).withSheet(size))));
    }

    @Test
    void cutsNothingOutOfWhatIsNotCut() {
        assertThat(CutOut.of(only(SmallClass.of(1).takes("Bead", "3").sold("Bead", "5", "1.00")))).isEmpty();
    }

    @Test
    void namesWhatIsMissingAndNobodySells() {
        MaterialsPlan plan = MaterialsPlanner.plan(SmallClass.of(1).takes("Bead", "3").takes("Ring", "1").sold("Bead", "5", "1.00")
                .catalogued(MaterialSpec.of("Ring", Unit.PIECE)).file());
        assertThat(plan.unsold()).extracting(MaterialsPlan.MaterialPlan::name).containsExactly("Ring");
    }

    @Test
    void tellsAgainWhatTheClassTook() {
        SmallClass beads = SmallClass.of(2).takes("Bead", "3").line(MaterialLine.of("Card", "1").withLent(true)).sold("Bead", "5", "1.00")
                .catalogued(MaterialSpec.of("Card", Unit.PIECE));
        Requirements required = MaterialsPlanner.plan(beads.file()).required();
        assertThat(required).isEqualTo(Requirements.of(beads.file()));
        assertThat(required.needs()).containsOnlyKeys("Bead", "Card");
        assertThat(required.lends("Card")).isTrue();
        assertThat(required.lends("Bead")).isFalse();
        assertThat(required.lends("Ring")).isFalse();
    }

    @Test
    void changesOnlyTheWordsOnKits() {
        MaterialsPlan plan = MaterialsPlanner.plan(SmallClass.of(2).takes("Bead", "3").sold("Bead", "5", "1.00").file());
        List<Kit> one = plan.kits().subList(0, 1);
        assertThat(plan.withKits(one).kits()).isEqualTo(one);
        assertThat(plan.withKits(one).withKits(plan.kits())).isEqualTo(plan);
        assertThat(plan.required().withKits(one).kits()).isEqualTo(one);
        assertThat(plan.required().withKits(one).needs()).isEqualTo(plan.required().needs());
    }

    /** Both sizes lack the same value, which is one fault. */
    @Test
    void saysOnceWhatSeveralSizesLack() {
        MaterialsPlan plan = MaterialsPlanner.plan(SmallClass.of(2).size("short", "length", "5 cm").size("long", "length", "8 cm").want("short", 1).want("long", 1)
                .takes("Bead", "2 * turns").file());
        assertThat(plan.sizes()).hasSize(2);
        assertThat(plan.faults()).hasSize(1);
    }

    private static MaterialsPlan.MaterialPlan only(SmallClass small) {
        return MaterialsPlanner.plan(small.file()).materials().get(0);
    }

    private static StockPiece length(String length) {
        return new StockPiece(q(length), null);
    }

    private static StockPiece sheet(String length, String width) {
        return new StockPiece(q(length), q(width));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
