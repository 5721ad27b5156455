package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is cut, and from which sizes of which supplier, as one choice with all else that is bought. */
class CutAndBoughtTest {
    private static final String LEAST = "Proven least: no other choice of packs and suppliers costs less.";

    /** Wire of 1 m would be cheapest by itself, at 4.00, but for the delivery that nothing else needs. */
    @Test
    void cutsFromTheLengthWhoseDeliveryIsNeededAnyway() {
        MaterialsPlan plan = plan(List.of(line("Wire", "300 mm", 10), MaterialLine.of("Bead", "1")),
                List.of(material("Wire", Unit.MM, sold("S0", "1 m", "1.00"), sold("S1", "3 m", "5.00")), material("Bead", Unit.PIECE, sold("S1", "1", "3.00"))),
                List.of(supplier("S0", null, "6.00", null), supplier("S1", null, "4.00", null)));

        assertThat(plan.total()).isEqualTo(Money.parse("GBP 12.00"));
        assertThat(plan.bound()).isEqualTo(Money.parse("GBP 12.00"));
        assertThat(plan.proof()).isEqualTo(LEAST);
        assertThat(plan.orders()).extracting(SupplierOrder::supplier).containsExactly("S1");
        assertThat(plan.materials().get(0).cutting().lengths()).extracting(CutLength::length).containsExactly(Quantity.parse("3 m"));
        assertThat(plan.materials().get(0).cutting().proof()).isEqualTo(
                "Which lengths to buy is weighed with all other purchases and their deliveries; how sure that is stands with the total.");
    }

    /** A sheet of 100 x 100 mm gives four, at 2.00 and a delivery; one of 200 x 100 mm gives all eight, at 5.00. */
    @Test
    void cutsFromTheSheetWhoseDeliveryIsNeededAnyway() {
        MaterialLine panel = MaterialLine.of("Copper", "50 mm").withWidth("50 mm").withPieces("8");
        MaterialsPlan plan = plan(List.of(panel, MaterialLine.of("Bead", "1")),
                List.of(material("Copper", Unit.CM2, sheet("S0", 100, "2.00"), sheet("S1", 200, "5.00")), material("Bead", Unit.PIECE, sold("S1", "1", "3.00"))),
                List.of(supplier("S0", null, "6.00", null), supplier("S1", null, "4.00", null)));

        assertThat(plan.total()).isEqualTo(Money.parse("GBP 12.00"));
        assertThat(plan.proof()).isEqualTo(LEAST);
        assertThat(plan.materials().get(0).sheets().sheets()).extracting(CutSheet::size).containsExactly(new Extent(Quantity.parse("200 mm"), Quantity.parse("100 mm")));
    }

    /** The shorter length comes too late, and the longer one gives every piece. */
    @Test
    void passesOverASizeThatComesTooLate() {
        List<SupplierSpec> suppliers = List.of(new SupplierSpec("Slow", "GBP", null, null, null, 30, false, null, null, null), supplier("Quick", null, null, null));
        MaterialSpec wire = material("Wire", Unit.MM, sold("Slow", "1 m", "1.00"), sold("Quick", "3 m", "5.00"));

        assertThat(orders(wire, suppliers, "300 mm")).containsExactly("Quick");
        assertThat(orders(material("Wire", Unit.MM, sold("Slow", "4 m", "1.00"), sold("Quick", "3 m", "5.00")), suppliers, "3500 mm")).containsExactly("Slow");
    }

    private static List<String> orders(MaterialSpec wire, List<SupplierSpec> suppliers, String piece) {
        return MaterialsPlanner.plan(file(List.of(line("Wire", piece, 2)), List.of(wire), suppliers), LocalDate.of(2027, 3, 1)).orders().stream().map(SupplierOrder::supplier).toList();
    }

    /** Rectangles and a mere area of one material: a leftover of the sheets might do for the area, so nothing is claimed. */
    @Test
    void claimsNothingWhereSheetsMightServeAnAreaToo() {
        MaterialLine panel = MaterialLine.of("Copper", "50 mm").withWidth("50 mm").withPieces("5");
        MaterialsPlan plan = plan(List.of(panel, MaterialLine.of("Copper", "20 cm2")),
                List.of(material("Copper", Unit.CM2, sheet("S0", 100, "2.00"))), List.of(supplier("S0", null, null, null)));

        assertThat(plan.total()).isEqualTo(Money.parse("GBP 6.00"));
        assertThat(plan.bound()).isEqualTo(Money.parse("GBP 4.00"));
        assertThat(plan.proof()).isEqualTo("Best choice found; another might cost up to GBP 2.00 less.");
    }

    /** Wire in up to three lengths and beads, of up to three suppliers; all in whole pence and without VAT. */
    record Problem(List<MaterialLine> lines, List<MaterialSpec> materials, List<SupplierSpec> suppliers, int[] pieces, int beads) {
        @Override
        public String toString() {
            return "%s of %s %s".formatted(lines.size(), materials.get(0).offers(), suppliers);
        }
    }

    static List<Problem> generated() {
        Random random = new Random(2027);
        return IntStream.range(0, 120).mapToObj(i -> problem(random)).toList();
    }

    private static Problem problem(Random random) {
        List<SupplierSpec> suppliers = IntStream.range(0, 2 + random.nextInt(2)).mapToObj(s -> supplier("S" + s, random.nextInt(4) == 0 ? pence(200 + random.nextInt(300)) : null,
                pence(random.nextInt(600)), random.nextBoolean() ? null : pence(300 + random.nextInt(900)))).toList();
        int[] pieces = random.ints(3 + random.nextInt(5), 10, 60).sorted().toArray();
        List<MaterialLine> lines = new ArrayList<>();
        for (int piece : pieces) {
            lines.add(line("Wire", piece + " cm", 1));
        }
        int beads = 2 + random.nextInt(6);
        lines.add(MaterialLine.of("Bead", Integer.toString(beads)));
        Offer[] wire = random.ints(2 + random.nextInt(2), 60, 200).mapToObj(cm -> wire(random, suppliers.size(), cm)).toArray(Offer[]::new);
        Offer[] bead = IntStream.range(0, 2).mapToObj(b -> sold("S" + random.nextInt(suppliers.size()), Integer.toString(1 + random.nextInt(4)), pence(50 + random.nextInt(200)).toString()))
                .toArray(Offer[]::new);
        return new Problem(lines, List.of(material("Wire", Unit.CM, wire), material("Bead", Unit.PIECE, bead)), suppliers, pieces, beads);
    }

    private static Offer wire(Random random, int suppliers, int cm) {
        int lengths = 1 + random.nextInt(2);
        int price = lengths * (cm + random.nextInt(100));
        List<Offer.PriceBreak> breaks = random.nextBoolean() ? null : List.of(new Offer.PriceBreak(2 + random.nextInt(2), pence(price * 4 / 5)));
        return Offer.of("S" + random.nextInt(suppliers), Quantity.of((long) cm * lengths, Unit.CM), pence(price)).withLengths(lengths).withBreaks(breaks);
    }

    /** Against every choice of up to five packs of each offer, of which every way of cutting is tried. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void noOtherChoiceOfPacksAndCutsCostsLess(Problem problem) {
        MaterialsPlan plan = plan(problem.lines(), problem.materials(), problem.suppliers());
        Money least = new Everything(problem).least();

        assertThat(plan.bound()).isLessThanOrEqualTo(least);
        assertThat(plan.total()).isLessThanOrEqualTo(least);
        assertThat(plan.proof()).isEqualTo(LEAST);
        assertThat(plan.orders()).allSatisfy(order -> assertThat(order.shortOfMinimum()).isNull());
        assertThat(plan.materials().get(1).bought().unmet().signum()).isZero();
        assertThat(opened(plan)).as("lengths cut are lengths bought").allSatisfy((length, number) -> assertThat(number).isLessThanOrEqualTo(bought(problem, plan).getOrDefault(length, 0L)));
        assertThat(plan.materials().get(0).cutting().lengths().stream().flatMap(l -> l.cuts().stream()).map(c -> c.length().in(Unit.CM).amount().intValueExact()).sorted())
                .containsExactlyElementsOf(IntStream.of(problem.pieces()).boxed().toList());
    }

    private static Map<Quantity, Long> opened(MaterialsPlan plan) {
        return plan.materials().get(0).cutting().lengths().stream().collect(Collectors.groupingBy(CutLength::length, Collectors.counting()));
    }

    private static Map<Quantity, Long> bought(Problem problem, MaterialsPlan plan) {
        Map<Quantity, Long> bought = new HashMap<>();
        for (SupplierOrder order : plan.orders()) {
            for (Purchase purchase : order.purchases()) {
                problem.materials().get(0).offers().stream().filter(o -> purchase.material().equals("Wire") && o.supplier().equals(order.supplier()) && o.holds().equals(purchase.holds())).findFirst()
                        .ifPresent(o -> bought.merge(Quantity.of(o.holds().amount().intValueExact() / o.lengths(), Unit.CM), (long) purchase.packs() * o.lengths(), Long::sum));
            }
        }
        return bought;
    }

    static List<Problem> generatedSheets() {
        Random random = new Random(1985);
        return IntStream.range(0, 60).mapToObj(i -> sheets(problem(random), random)).toList();
    }

    /** The same with squares of 5 cm in place of wire, of which a sheet gives as many as lie on it in rows. */
    private static Problem sheets(Problem wires, Random random) {
        List<MaterialLine> lines = new ArrayList<>(List.of(MaterialLine.of("Wire", "5 cm").withWidth("5 cm").withPieces(Integer.toString(wires.pieces().length + 2))));
        lines.add(wires.lines().get(wires.lines().size() - 1));
        List<Offer> offers = wires.materials().get(0).offers().stream().map(wire -> {
            Extent size = new Extent(Quantity.of(5 + random.nextInt(13), Unit.CM), Quantity.of(5 + random.nextInt(7), Unit.CM));
            return new Offer(wire.supplier(), size.area().times(wire.lengths()), wire.price(), null, size, null, null, wire.breaks());
        }).toList();
        return new Problem(lines, List.of(material("Wire", Unit.CM2, offers.toArray(Offer[]::new)), wires.materials().get(1)), wires.suppliers(), wires.pieces(), wires.beads());
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("generatedSheets")
    void noOtherChoiceOfPacksAndSheetsCostsLess(Problem problem) {
        MaterialsPlan plan = plan(problem.lines(), problem.materials(), problem.suppliers());

        assertThat(plan.total()).isEqualTo(plan.bound()).isLessThanOrEqualTo(new Everything(problem).least());
        assertThat(plan.proof()).isEqualTo(LEAST);
        assertThat(plan.materials().get(0).sheets().sheets().stream().mapToInt(s -> s.pieces().size()).sum()).isEqualTo(problem.pieces().length + 2);
    }

    /** Tries it all, in whole pence. */
    private static final class Everything {
        private static final int MOST_PACKS = 5;

        private final Problem problem;
        private final List<Offer> offers = new ArrayList<>();
        private final Map<List<Integer>, Boolean> cuttable = new HashMap<>();
        private int least = Integer.MAX_VALUE;

        Everything(Problem problem) {
            this.problem = problem;
            problem.materials().forEach(m -> offers.addAll(m.offers()));
        }

        Money least() {
            choose(new int[offers.size()], 0);
            return Money.ofMinor(CurrencyUnit.GBP, least);
        }

        private void choose(int[] packs, int at) {
            if (at == packs.length) {
                int total = total(packs);
                least = total < least && isEnough(packs) ? total : least;
                return;
            }
            for (packs[at] = 0; packs[at] <= MOST_PACKS; packs[at]++) {
                choose(packs, at + 1);
            }
            packs[at] = 0;
        }

        private int total(int[] packs) {
            int total = 0;
            for (SupplierSpec supplier : problem.suppliers()) {
                int goods = IntStream.range(0, packs.length).filter(o -> offers.get(o).supplier().equals(supplier.name())).map(o -> packs[o] * price(offers.get(o), packs[o])).sum();
                if (goods > 0 && supplier.minimumOrder() != null && goods < minor(supplier.minimumOrder())) {
                    return Integer.MAX_VALUE;
                }
                boolean free = goods == 0 || supplier.freeAbove() != null && goods >= minor(supplier.freeAbove());
                total += goods + (free || supplier.delivery() == null ? 0 : minor(supplier.delivery()));
            }
            return total;
        }

        private static int price(Offer offer, int packs) {
            return offer.breaks().stream().filter(b -> b.packs() <= packs).mapToInt(b -> minor(b.price())).reduce(minor(offer.price()), (a, b) -> b);
        }

        private static int minor(BigDecimal pounds) {
            return pounds.movePointRight(2).intValueExact();
        }

        private boolean isEnough(int[] packs) {
            int lengths = problem.materials().get(0).offers().size();
            int beads = IntStream.range(lengths, packs.length).map(o -> packs[o] * offers.get(o).holds().amount().intValueExact()).sum();
            if (offers.get(0).sheet() != null) {
                return beads >= problem.beads() && IntStream.range(0, lengths).map(o -> packs[o] * squares(offers.get(o))).sum() >= problem.pieces().length + 2;
            }
            List<Integer> free = IntStream.range(0, lengths).boxed().flatMap(o -> IntStream.range(0, packs[o] * offers.get(o).lengths())
                    .mapToObj(n -> offers.get(o).holds().amount().intValueExact() / offers.get(o).lengths())).sorted().toList();
            return beads >= problem.beads() && cuttable.computeIfAbsent(free, f -> cut(problem.pieces().length - 1, f.stream().mapToInt(Integer::intValue).toArray()));
        }

        private static int squares(Offer offer) {
            int sheets = offer.holds().base().divide(offer.sheet().area().base()).intValueExact();
            return sheets * (offer.sheet().length().amount().intValueExact() / 5) * (offer.sheet().width().amount().intValueExact() / 5);
        }

        private boolean cut(int piece, int[] free) {
            if (piece < 0) {
                return true;
            }
            for (int f = 0; f < free.length; f++) {
                boolean another = f > 0 && free[f] == free[f - 1];
                if (!another && free[f] >= problem.pieces()[piece]) {
                    free[f] -= problem.pieces()[piece];
                    boolean does = cut(piece - 1, free);
                    free[f] += problem.pieces()[piece];
                    if (does) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    private static MaterialsPlan plan(List<MaterialLine> lines, List<MaterialSpec> materials, List<SupplierSpec> suppliers) {
        return MaterialsPlanner.plan(file(lines, materials, suppliers));
    }

    private static ClassFile file(List<MaterialLine> lines, List<MaterialSpec> materials, List<SupplierSpec> suppliers) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Coil").craft("wirework").level(SkillLevel.BEGINNER).sizes(List.of(new Size("One", Map.of()))).materials(lines).build();
        ClassSetup setup = ClassSetup.plain("Evening", List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))), 1, SkillLevel.BEGINNER, null, "GBP");
        return new ClassFile(project, setup, null, materials, suppliers);
    }

    private static MaterialLine line(String material, String piece, int pieces) {
        return MaterialLine.of(material, piece).withPieces(Integer.toString(pieces));
    }

    private static MaterialSpec material(String name, Unit unit, Offer... offers) {
        return MaterialSpec.of(name, unit).withOffers(List.of(offers));
    }

    private static Offer sold(String supplier, String holds, String price) {
        return Offer.of(supplier, Quantity.parse(holds), new BigDecimal(price));
    }

    private static Offer sheet(String supplier, int length, String price) {
        return new Offer(supplier, Quantity.of(length, Unit.CM2), new BigDecimal(price), null, new Extent(Quantity.of(length, Unit.MM), Quantity.parse("100 mm")), null, null, null);
    }

    private static SupplierSpec supplier(String name, BigDecimal minimum, Object delivery, BigDecimal freeAbove) {
        return new SupplierSpec(name, "GBP", minimum, delivery == null ? null : new BigDecimal(delivery.toString()), freeAbove, 2, false, null, null, null);
    }

    private static BigDecimal pence(int pence) {
        return BigDecimal.valueOf(pence, 2);
    }
}
