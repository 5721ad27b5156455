package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Unit;
import benchful.projects.Step;
import benchful.projects.Tool;
import benchful.venues.VenueSpec;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hanger knotted from waxed cord, which smells, with a hot knife: what each brings, and what the room and a child bring. */
class HazardIndexTest {
    private static SmallClass hanger() {
        return SmallClass.of(4).takes("cord", "2 m")
                .catalogued(MaterialSpec.of("cord", Unit.M).withHazards(List.of("fumes", "fire")))
                .catalogued(MaterialSpec.of("varnish", Unit.ML).withHazards(List.of("solvents")))
                .step(Step.of("seal", "Seal the ends", StepKind.SHOW).withLasts(Duration.ofMinutes(10)).withHazards(List.of("burns", "fumes")));
    }

    private static ClassFile file(SmallClass hanger, VenueSpec venue) {
        ClassFile file = hanger.file();
        Tool knife = new Tool("hot knife", false, null, List.of("burns"));
        return new ClassFile(file.project().withHazards(List.of("cuts")).withTools(List.of(knife)), file.setup(), venue, file.materials(), file.suppliers());
    }

    private static VenueSpec loft(String... hazards) {
        return new VenueSpec("Loft", null, null, null, null, null, null, null, null, null, List.of(hazards), null);
    }

    @Test
    void saysWhatBringsEachHazardButNothingOfMaterialsThatNobodyTakes() {
        HazardIndex index = HazardIndex.of(file(hanger().youngest(9), loft("slips-trips")));

        assertThat(index.ids()).containsExactly("cuts", "fumes", "fire", "burns");
        assertThat(index.of("cuts")).containsExactly("the work as a whole");
        assertThat(index.of("fumes")).containsExactly("cord", "step “Seal the ends”");
        assertThat(index.of("burns")).containsExactly("hot knife", "step “Seal the ends”");
        assertThat(index.of("solvents")).isEmpty();
    }

    @Test
    void beginsAnAssessmentWithTheRoomAndTheGroup() {
        HazardIndex index = HazardIndex.withRoom(file(hanger().youngest(9), loft("slips-trips", "fire")));

        assertThat(index.ids()).containsExactly("slips-trips", "fire", "children", "cuts", "fumes", "burns");
        assertThat(index.of("fire")).containsExactly("the room, Loft", "cord");
        assertThat(index.of("children")).containsExactly("the group: the youngest is 9");
    }

    @Test
    void saysNothingOfARoomThatNobodyChoseNorOfGrownUps() {
        assertThat(HazardIndex.withRoom(file(hanger(), null)).ids()).containsExactly("cuts", "fumes", "fire", "burns");
    }
}
