package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.buying.Purchase;
import benchful.core.cutting.CutSheet;
import benchful.core.needs.CutNeed;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import benchful.web.forms.SpecFormat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Rectangles from sheet, followed from the size of a piece to the sheets that are bought. */
class SheetMaterialsTest {
    private static final MaterialLine PANEL = MaterialLine.of("Copper", "long + 2 mm").withWidth("40 mm").withPieces("2");
    private static final Size SMALL = new Size("small", Map.of("long", q("58 mm")));
    private static final Size LARGE = new Size("large", Map.of("long", q("78 mm")));
    private static final List<Offer> OFFERS = List.of(
            Offer.of("Works", q("150 cm2"), new BigDecimal("5.60")).withSheet(new Extent(q("150 mm"), q("100 mm"))),
            Offer.of("Works", q("600 cm2"), new BigDecimal("24.00")).withSheet(new Extent(q("150 mm"), q("100 mm"))));

    @Test
    void followsRectanglesFromTheirSizeToTheSheets() throws Exception {
        MaterialsPlan plan = plan(copper(null, "20", OFFERS), PANEL);

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.kits().get(0).contents().get(0).words()).isEqualTo("2 of 60 × 40 mm");
        assertThat(plan.kits().get(0).contents().get(0).amount()).isEqualTo(q("48 cm2"));
        MaterialsPlan.MaterialPlan copper = plan.materials().get(0);
        assertThat(copper.need().cuts()).containsExactly(new CutNeed("small", new Extent(q("60 mm"), q("40 mm")), false, 6),
                new CutNeed("large", new Extent(q("80 mm"), q("40 mm")), false, 2), new CutNeed("reserve", new Extent(q("80 mm"), q("40 mm")), false, 2));
        assertThat(copper.need().net()).isEqualTo(q("208 cm2"));
        assertThat(copper.need().total()).isEqualTo(q("272 cm2"));
        assertThat(copper.need().reasons()).extracting(Sentence::toString).contains(
                "20 % of 8 pieces is added for waste, rounded up.", "These are 2 pieces of 80 mm x 40 mm, large enough for anybody.");
        // 272 cm2 of two sheets' 300 leave too little beside pieces 40 wide: two rows of 40 fill 80 of the 100
        assertThat(copper.sheets().isProven()).isTrue();
        assertThat(copper.sheets().sheets()).hasSize(3);
        assertThat(copper.sheets().sheets().stream().flatMap(s -> s.pieces().stream())).hasSize(10);
        assertThat(plan.orders().get(0).purchases()).extracting(Purchase::packs, Purchase::holds).containsExactly(tuple(3, q("150 cm2")));
        assertThat(copper.bought().unmet().signum()).isZero();
        assertThat(copper.bought().reasons()).extracting(Sentence::toString).contains("10 rectangles are cut from 3 new sheets of 150 mm x 100 mm; each cut loses 1 mm.",
                "Proven least: no other cuts from edge to edge take fewer new sheets.");
        assertThat(SpecFormat.json().writeValueAsString(plan)).contains("\"sheets\":{\"sheets\":[{\"size\":{\"length\":\"150 mm\",\"width\":\"100 mm\"}", "\"proven\":true");
    }

    /** What becomes of the sheets adds up: pieces, offcuts, and what the cuts lose. */
    @Test
    void accountsForEveryPartOfTheSheets() {
        MaterialsPlan.MaterialPlan copper = plan(copper(q("310 cm2"), null, OFFERS), PANEL).materials().get(0);

        assertThat(copper.bought().reasons().get(0)).hasToString("31000 mm2 are on hand, taken as 2 x 150 mm x 100 mm.");
        Quantity kept = copper.sheets().sheets().stream().flatMap(s -> s.offcuts().stream()).filter(CutSheet.Offcut::kept)
                .map(o -> o.size().area()).reduce(Quantity.zero(Unit.CM2), Quantity::plus);
        Quantity opened = copper.sheets().sheets().stream().map(s -> s.size().area()).reduce(Quantity.zero(Unit.CM2), Quantity::plus);
        assertThat(copper.bought().leftover()).isEqualTo(q("310 cm2").plus(copper.bought().bought()).minus(opened).plus(kept));
        assertThat(copper.need().net()).isLessThanOrEqualTo(opened.minus(kept));
    }

    @Test
    void buysAMereAreaBesideTheRectangles() {
        MaterialLine filings = MaterialLine.of("Copper", "10 cm2");
        MaterialsPlan.MaterialPlan copper = plan(copper(null, null, OFFERS), PANEL, filings).materials().get(0);

        assertThat(copper.need().total()).isEqualTo(q("248 cm2"));
        assertThat(copper.bought().unmet().signum()).isZero();
        assertThat(copper.bought().bought()).isEqualTo(q("450 cm2"));
    }

    @Test
    void saysWhatKeepsRectanglesFromBeingCut() {
        Offer small = Offer.of("Works", q("25 cm2"), BigDecimal.ONE).withSheet(new Extent(q("50 mm"), q("50 mm")));
        MaterialsPlan large = plan(copper(null, null, List.of(small, Offer.of("Works", q("900 cm2"), BigDecimal.ONE))), PANEL);

        assertThat(large.warnings()).extracting(Sentence::toString).containsExactly(
                "“Copper” from “Works” has no size of sheet, so no rectangles can be planned on it; that offer is left out.",
                "“Copper” can't be cut: A rectangle for “small” takes 60 mm x 40 mm, which lies on no sheet there is. Offer a larger one, or join pieces.");
        assertThat(large.materials().get(0).bought().unmet()).isEqualTo(q("208 cm2"));
        MaterialSpec byMass = MaterialSpec.of("Copper", Unit.G);
        assertThat(plan(byMass, PANEL).faults()).containsExactly(
                new Fault("/project/materials/0/width", "“Copper” is counted by mass; rectangles are cut from what is counted by area, such as sheets of a size."));
    }

    private static MaterialsPlan plan(MaterialSpec material, MaterialLine... lines) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Leaf").craft("metalwork").level(SkillLevel.BEGINNER)
                .sizes(List.of(SMALL, LARGE)).materials(List.of(lines)).build();
        ClassSetup setup = ClassSetup.plain("Evening", List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))), 4,
                SkillLevel.BEGINNER, new TreeMap<>(Map.of("small", 3, "large", 1)).descendingMap(), "GBP");
        return MaterialsPlanner.plan(new ClassFile(project, setup, null, List.of(material), List.of(new SupplierSpec("Works", "GBP", null, null, null, 3, false, null, null, null))));
    }

    private static MaterialSpec copper(Quantity onHand, String waste, List<Offer> offers) {
        return MaterialSpec.of("Copper", Unit.CM2)
                .withWaste(waste == null ? null : Map.of(SkillLevel.BEGINNER, new BigDecimal(waste))).withCutLoss(q("1 mm"))
                .withOnHand(onHand).withOffers(offers);
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
