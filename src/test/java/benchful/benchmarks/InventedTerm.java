package benchful.benchmarks;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetupBuilder;
import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.TermRequest;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/** A term of invented classes, projects, materials and suppliers, the same for the same seed. */
final class InventedTerm {
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 9);

    private final Random random;
    private final List<SupplierSpec> suppliers;
    private final List<MaterialSpec> materials;

    InventedTerm(long seed, int materialCount, int supplierCount) {
        this.random = new Random(seed);
        this.suppliers = IntStream.range(0, supplierCount).mapToObj(this::supplier).toList();
        this.materials = IntStream.range(0, materialCount).mapToObj(this::material).toList();
    }

    List<SupplierSpec> suppliers() {
        return suppliers;
    }

    List<MaterialSpec> materials() {
        return materials;
    }

    TermRequest classes(int number) {
        CatalogueSpec catalogue = new CatalogueSpec(materials, suppliers);
        List<ProjectSpec> projects = IntStream.range(0, Math.max(1, number / 3)).mapToObj(this::project).toList();
        return new TermRequest(IntStream.range(0, number)
                .mapToObj(i -> new TermRequest.Part("Class " + i, file(projects.get(i % projects.size()), i)))
                .toList(), catalogue);
    }

    private ClassFile file(ProjectSpec project, int i) {
        ClassSetup setup = ClassSetupBuilder.builder().title("Class " + i)
                .meetings(List.of(new ClassSetup.Meeting(FIRST.plusDays(2L * i), LocalTime.of(10, 0), LocalTime.of(13, 0))))
                .headcount(6 + random.nextInt(7)).level(SkillLevel.BEGINNER).sizes(Map.of("large", 3)).demonstration("small")
                .spares(1).currency("GBP").build();
        return new ClassFile(project, setup, null, materials, suppliers);
    }

    private ProjectSpec project(int i) {
        List<MaterialLine> lines = random.ints(0, materials.size()).distinct().limit(11).mapToObj(this::line).toList();
        return ProjectSpecBuilder.builder().name("Project " + i).craft("craft").level(SkillLevel.BEGINNER)
                .sizes(List.of(size("small", "40 cm"), size("large", "55 cm"))).materials(lines).build();
    }

    private MaterialLine line(int m) {
        boolean cut = materials.get(m).unit() == Unit.M;
        String amount = cut ? "%d * length".formatted(1 + random.nextInt(3)) : "%d * ceil(length / 10 cm)".formatted(1 + random.nextInt(8));
        return MaterialLine.of(materials.get(m).name(), amount).withPieces(cut ? String.valueOf(1 + random.nextInt(3)) : null);
    }

    private MaterialSpec material(int i) {
        boolean cut = i % 6 == 0;
        Unit unit = cut ? Unit.M : Unit.PIECE;
        List<Offer> offers = random.ints(0, suppliers.size()).distinct().limit(2 + random.nextInt(3)).mapToObj(s -> offer(s, unit)).toList();
        return MaterialSpec.of("Material " + i, unit).withWaste(Map.of(SkillLevel.BEGINNER, BigDecimal.valueOf(5 + random.nextInt(15))))
                .withCutLoss(cut ? Quantity.parse("2 mm") : null)
                .withOnHand(new Quantity(BigDecimal.valueOf(random.nextInt(10)), unit)).withOffers(offers);
    }

    private Offer offer(int supplier, Unit unit) {
        int holds = unit == Unit.M ? 2 + random.nextInt(9) : List.of(10, 12, 20, 25, 50, 100).get(random.nextInt(6));
        BigDecimal price = BigDecimal.valueOf(holds * (8L + random.nextInt(10)), 2);
        List<Offer.PriceBreak> breaks = random.nextInt(3) > 0 ? List.of()
                : List.of(new Offer.PriceBreak(5, price.multiply(new BigDecimal("0.9")).setScale(2, RoundingMode.HALF_UP)));
        return Offer.of(suppliers.get(supplier).name(), Quantity.of(holds, unit), price).withBreaks(breaks);
    }

    private SupplierSpec supplier(int i) {
        return new SupplierSpec("Supplier " + i, "GBP", i % 3 == 0 ? new BigDecimal("15.00") : null,
                BigDecimal.valueOf(250 + random.nextInt(400), 2), BigDecimal.valueOf(30 + random.nextInt(40)), 2 + random.nextInt(9), true,
                i % 4 == 0 ? null : new BigDecimal("20"), null, null);
    }

    private static Size size(String name, String length) {
        return new Size(name, Map.of("length", Quantity.parse(length)));
    }
}
