package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.Measure;
import benchful.venues.VenueSpec;
import benchful.web.forms.SpecReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A class file says all its faults, each in its place. */
class ClassFileReaderTest {
    private static final VenueSpec LOFT = new VenueSpec("Loft", null, null, null, null, null, null, null, null, null, List.of("ghosts"), null);

    @Test
    void readsWhatItWrote() {
        ClassFile file = hanger().sold("cord", "10 m", "4.00").file();
        assertThat(read(file)).isInstanceOfSatisfying(SpecReader.Read.class, read -> assertThat(read.sheet()).isEqualTo(file));
    }

    @Test
    void namesEachHazardThatNobodyKnows() {
        ClassFile file = hanger().catalogued(MaterialSpec.of("cord", Unit.M).withHazards(List.of("fire", "ghosts"))).file();
        assertThat(faults(new ClassFile(file.project().withHazards(List.of("ghosts")), file.setup(), LOFT, file.materials(), file.suppliers())))
                .extracting(Fault::pointer).containsExactly("/project/hazards/0", "/venue/hazards/0", "/materials/0/hazards/1");
    }

    @Test
    void checksMaterialsAndSuppliers() {
        ClassFile file = hanger().catalogued(MaterialSpec.of("cord", Unit.M).withOffers(List.of(Offer.of("Loft", Quantity.parse("10 ml"), BigDecimal.ONE)))).file();
        SupplierSpec shells = new SupplierSpec("Loft", "XYZ", null, null, null, 3, false, null, null, null);
        assertThat(faults(new ClassFile(file.project(), file.setup(), null, file.materials(), List.of(shells))))
                .extracting(Fault::pointer).containsExactly("/materials/0/offers/0/holds", "/suppliers/0/currency");
    }

    @Test
    void checksTheClassAndEachSizeOfItsProject() {
        assertThat(faults(hanger().want("Two", 2).file())).extracting(Fault::pointer).containsExactly("/class/sizes/Two");
        ClassFile cut = SmallClass.of(4).size("50", "length", "50 mm").size("20", "length", "20 mm").takes("cord", "length - 30 mm").shows("knot", 10).file();
        assertThat(faults(new ClassFile(cut.project().withMeasures(List.of(new Measure("length", "Length", Unit.MM))), cut.setup(), null, cut.materials(), cut.suppliers())))
                .singleElement().satisfies(fault -> {
                    assertThat(fault.pointer()).isEqualTo("/project/materials/0/amount");
                    assertThat(fault.detail()).isEqualTo("This comes to -10 mm for the size “20”; it can't be less than 0.");
                });
    }

    private static SmallClass hanger() {
        return SmallClass.of(4).takes("cord", "2 m").shows("knot", 10);
    }

    private static List<Fault> faults(ClassFile file) {
        return ((SpecReader.Faulty<ClassFile>) read(file)).faults();
    }

    private static SpecReader.Reading<ClassFile> read(ClassFile file) {
        ClassFileReader reader = BroughtHazards.reader();
        return reader.read(reader.yaml(file).getBytes(StandardCharsets.UTF_8));
    }
}
