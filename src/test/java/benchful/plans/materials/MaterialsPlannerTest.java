package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetupBuilder;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.buying.SupplierOrder;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.plans.SmallClass;
import benchful.plans.materials.kits.Kit;
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
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One class of cords and beads, followed from sizes to orders. */
class MaterialsPlannerTest {
    private static final ProjectSpec HANGER = ProjectSpecBuilder.builder().name("Hanger").craft("macrame")
            .level(SkillLevel.BEGINNER).sizes(List.of(size("short", "50 cm"), size("long", "80 cm")))
            .materials(List.of(MaterialLine.of("Cord", "4 * length").withPieces("2"),
                    MaterialLine.of("Bead", "6").withChoice("colour"),
                    MaterialLine.of("Glue", "10 ml").withShared(true),
                    MaterialLine.of("Ring", "1").withInKit(false)))
            .build();
    private static final MaterialSpec CORD = MaterialSpec.of("Cord", Unit.M).withCutLoss(Quantity.parse("5 mm"))
            .withUnitMass(Quantity.parse("3 g")).withOnHand(Quantity.parse("2.5 m"))
            .withOffers(List.of(Offer.of("Rope loft", Quantity.parse("10 m"), new BigDecimal("4.50"))));
    private static final MaterialSpec BEAD = MaterialSpec.of("Bead", Unit.PIECE)
            .withWaste(Map.of(SkillLevel.BEGINNER, BigDecimal.TEN)).withUnitMass(Quantity.parse("0.5 g"))
            .withOnHand(Quantity.parse("10"))
            .withOffers(List.of(Offer.of("Rope loft", Quantity.parse("25"), new BigDecimal("3.00")),
                    Offer.of("Bead barn", Quantity.parse("10"), new BigDecimal("1.00"))));
    private static final MaterialSpec GLUE = MaterialSpec.of("Glue", Unit.ML)
            .withOffers(List.of(Offer.of("Bead barn", Quantity.parse("50 ml"), new BigDecimal("2.99"))));
    private static final MaterialSpec RING = MaterialSpec.of("Ring", Unit.PIECE).withOnHand(Quantity.parse("8"));
    private static final List<SupplierSpec> SUPPLIERS = List.of(
            new SupplierSpec("Rope loft", "GBP", null, new BigDecimal("3.95"), new BigDecimal("50"), 3, false, new BigDecimal("20"), null, null),
            new SupplierSpec("Bead barn", "GBP", new BigDecimal("5.00"), null, null, 10, false, null, null, null));

    @Test
    void followsAClassFromSizesToOrders() {
        MaterialsPlan plan = MaterialsPlanner.plan(file(HANGER, List.of(CORD, BEAD, GLUE, RING)), LocalDate.of(2027, 2, 20));

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.sizes()).extracting(MaterialsPlan.SizeTaken::name, MaterialsPlan.SizeTaken::students,
                MaterialsPlan.SizeTaken::demonstrations, MaterialsPlan.SizeTaken::spares).containsExactly(
                        tuple("short", 3, 0, 1), tuple("long", 2, 1, 0));
        assertThat(plan.kits()).extracting(Kit::title).containsExactly("Ann", "Student 2", "Student 3", "Student 4", "Student 5", "Demonstration", "Spare 1");
        assertThat(plan.kits().get(0).contents()).containsExactly(
                new Kit.Content("Cord", Quantity.parse("6.4 m"), 2, Quantity.parse("3.2 m"), null, null, null, null, null),
                new Kit.Content("Bead", Quantity.parse("6"), null, null, null, "colour", null, null, null));
        assertThat(plan.kits().get(0).mass()).isEqualTo(Quantity.parse("22.2 g"));
        assertThat(plan.bench()).extracting(Kit.Content::material, Kit.Content::amount).containsExactly(
                tuple("Glue", Quantity.parse("10 ml")), tuple("Ring", Quantity.parse("7")));

        // Cord: 4 x 2 of 2 m and 3 x 2 of 3.2 m = 35.2 m, the first piece from the 2.5 m on hand, the rest from 4 of 10 m
        MaterialsPlan.MaterialPlan cord = plan.materials().get(0);
        assertThat(cord.need().total()).isEqualTo(Quantity.parse("35.2 m"));
        assertThat(cord.cutting().bought()).isEqualTo(4);
        assertThat(cord.cutting().isProven()).isTrue();
        assertThat(cord.bought().reasons()).extracting(Sentence::toString).containsExactly(
                "2.5 m are on hand, taken as 1 x 2.5 m.", "4 packs of 10 m at GBP 4.50: GBP 18.00 before tax.",
                "14 pieces are cut from 1 length on hand and 4 new lengths of 10 m; each cut loses 5 mm.",
                "Proven least: no other cutting takes fewer new lengths.", "Cuts lose 70 mm, and 3.245 m fall off in pieces too small to keep.",
                "Offcuts to keep: 1 x 3.985 m.", "3.985 m are left over.");
        assertThat(cord.bought().onHand()).isEqualTo(Quantity.parse("2.5 m"));
        assertThat(cord.bought().bought()).isEqualTo(Quantity.parse("40 m"));
        assertThat(cord.bought().leftover()).isEqualTo(Quantity.parse("3.985 m"));
        assertThat(cord.bought().leftoverValue()).isEqualTo(Money.parse("GBP 1.79"));
        // Beads: 42 and 10 %, 46.2, rounded up; less 10 on hand; 4 packs of 10 cost less than 2 of 25 with VAT
        MaterialsPlan.MaterialPlan bead = plan.materials().get(1);
        assertThat(bead.need().reasons()).extracting(Sentence::toString).containsExactly(
                "2 students in size “long” take 6 pcs each: 12 pcs in all.", "3 students in size “short” take 6 pcs each: 18 pcs in all.",
                "The demonstration piece in size “long” takes 6 pcs.", "1 spare kit in size “short” takes 6 pcs.",
                "10 % is added for waste: 4.2 pcs.", "46.2 pcs is rounded up to 47 pcs.");
        assertThat(bead.bought().missing()).isEqualTo(Quantity.parse("37"));
        assertThat(bead.bought().leftover()).isEqualTo(Quantity.parse("3"));

        SupplierOrder barn = plan.orders().get(0);
        assertThat(barn.goods()).isEqualTo(Money.parse("GBP 6.99"));
        assertThat(barn.orderBy()).isEqualTo(LocalDate.of(2027, 2, 23));
        assertThat(barn.late()).isFalse();
        SupplierOrder loft = plan.orders().get(1);
        assertThat(loft.total()).isEqualTo(Money.parse("GBP 26.34")); // 18.00 + 3.60, delivery 3.95 + 0.79
        assertThat(loft.late()).isFalse();
        assertThat(plan.orderBy()).isEqualTo(LocalDate.of(2027, 2, 23));
        assertThat(plan.total()).isEqualTo(Money.parse("GBP 33.33"));
        assertThat(plan.proof()).isEqualTo("Proven least: no other choice of packs and suppliers costs less.");
        assertThat(plan.warnings()).isEmpty();
    }

    @Test
    void warnsOfASupplierWhoIsTooLateAndBuysElsewhereWhatItCan() {
        MaterialsPlan plan = MaterialsPlanner.plan(file(HANGER, List.of(CORD, BEAD, GLUE, RING)), LocalDate.of(2027, 2, 26));

        assertThat(plan.orders()).extracting(SupplierOrder::supplier, SupplierOrder::late).containsExactly(tuple("Bead barn", true), tuple("Rope loft", false));
        assertThat(plan.materials().get(1).bought().bought()).isEqualTo(Quantity.parse("50"));
        assertThat(plan.warnings()).extracting(Sentence::toString).containsExactly(
                "“Bead barn” can't deliver in time: the last day to order was 2027-02-23.");
    }

    @Test
    void writesItselfAsJson() throws Exception {
        String json = SpecFormat.json().writeValueAsString(MaterialsPlanner.plan(file(HANGER, List.of(CORD, BEAD, GLUE, RING))));

        assertThat(json).contains("\"order_by\":\"2027-02-23\"", "\"total\":\"GBP 33.33\"", "\"proven\":true", "1 spare kit in size “short” takes 6 pcs.");
    }

    /** What serves all is as much as the largest size that is made asks of it. */
    @Test
    void bringsOfWhatServesAllAsMuchAsTheLargestSizeAsks() {
        SmallClass rods = SmallClass.of(4).size("short", "length", "50 cm").size("long", "length", "80 cm").shares("Rod", "2 * length", null);

        assertThat(rod(rods)).isEqualTo(Quantity.parse("100 cm"));
        assertThat(rod(rods.want("long", 1))).isEqualTo(Quantity.parse("160 cm"));
    }

    private static Quantity rod(SmallClass rods) {
        return MaterialsPlanner.plan(rods.file()).materials().get(0).need().total();
    }

    /** 3 m are cut from 4 m at 0.10: a metre at 0.025 is left, and 3.945 is asked for the delivery. */
    @Test
    void roundsHalfAPennyUp() {
        MaterialsPlan plan = MaterialsPlanner.plan(SmallClass.of(1).line(MaterialLine.of("Cord", "1 m").withPieces("3"))
                .sold("Cord", "4 m", "0.10").delivered("3.945").file());

        assertThat(plan.materials().get(0).bought().leftover()).isEqualTo(Quantity.parse("1 m"));
        assertThat(plan.materials().get(0).bought().leftoverValue()).isEqualTo(Money.parse("GBP 0.03"));
        assertThat(plan.orders().get(0).delivery()).isEqualTo(Money.parse("GBP 3.95"));
    }

    @Test
    void planStandsWhereALineFailsAndAMaterialIsUnknown() {
        MaterialsPlan plan = MaterialsPlanner.plan(file(HANGER, List.of(
                MaterialSpec.of("Cord", Unit.G), BEAD)));

        assertThat(plan.faults()).extracting(Fault::pointer).containsExactly("/project/materials/0/amount", "/project/materials/0/pieces");
        assertThat(plan.materials()).extracting(MaterialsPlan.MaterialPlan::name).contains("Bead", "Glue", "Ring");
        assertThat(plan.warnings()).extracting(Sentence::toString)
                .contains("“Glue” is not in the catalogue, so it has no waste allowance and no offers.");
        assertThat(plan.materials().get(2).bought().unmet()).isEqualTo(Quantity.parse("10 ml"));
    }

    @ParameterizedTest
    @CsvSource({"BEGINNER, 21", "IMPROVER, 11", "EXPERIENCED, 11"})
    void addsTheWasteOfTheLevelOrElseOfTheNextLessPractised(SkillLevel level, String waste) {
        MaterialSpec bead = BEAD.withWaste(Map.of(SkillLevel.BEGINNER, new BigDecimal("50"), SkillLevel.IMPROVER, new BigDecimal("25")));
        ClassFile file = file(HANGER, List.of(CORD, bead, GLUE, RING));

        MaterialsPlan plan = MaterialsPlanner.plan(new ClassFile(file.project(), ClassSetupBuilder.builder(file.setup()).level(level).build(), null, file.materials(), file.suppliers()));

        assertThat(plan.materials().get(1).need().waste()).isEqualTo(Quantity.parse(waste));
    }

    private static ClassFile file(ProjectSpec project, List<MaterialSpec> materials) {
        ClassSetup setup = ClassSetupBuilder.builder().title("Evening")
                .meetings(List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))))
                .headcount(5).level(SkillLevel.BEGINNER).sizes(Map.of("long", 1))
                .students(List.of(ClassSetup.Student.named("Ann").withSeat("A1").withSize("long")))
                .demonstration("long").spares(1).currency("GBP").build();
        return new ClassFile(project, setup, null, materials, SUPPLIERS);
    }

    private static Size size(String name, String length) {
        return new Size(name, Map.of("length", Quantity.parse(length)));
    }
}
