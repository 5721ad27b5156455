package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.hazards.HazardSpec;
import benchful.hazards.LibraryFile;
import benchful.venues.VenueSpec;
import benchful.venues.VenueSpec.Ventilation;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is warned about before printing: ages, air, and what goes home uncured. */
class SafetyAdviceTest {
    private static final HazardSpec SOLVENT = LibraryFile.byId().get("solvent-vapour");
    private static final HazardSpec TORCH = LibraryFile.byId().get("open-flame");

    @Test
    void warnsOfAnAgeThatAHazardDoesNotFit() throws IOException {
        assertThat(sentences(file(12, Ventilation.EXTRACTOR), SOLVENT))
                .anySatisfy(s -> assertThat(s).startsWith("Solvent vapour and solvent-based glue: usually not under 14 years").contains("the youngest is 12"));
        assertThat(sentences(file(14, Ventilation.EXTRACTOR), SOLVENT)).noneMatch(s -> s.contains("usually not under"));
        assertThat(sentences(file(null, Ventilation.EXTRACTOR), SOLVENT)).noneMatch(s -> s.contains("usually not under"));
    }

    @Test
    void warnsOfAirThatARoomLacksOrThatNobodyKnows() throws IOException {
        assertThat(sentences(file(null, Ventilation.WINDOWS), TORCH)).anyMatch(s -> s.contains("needs an extractor, and Shed has windows that open."));
        assertThat(sentences(file(null, null), TORCH)).anyMatch(s -> s.contains("nothing is said of the air in Shed"));
        assertThat(sentences(file(null, Ventilation.EXTRACTOR), TORCH)).noneMatch(s -> s.contains("Shed"));
        ClassFile nowhere = file(null, null);
        assertThat(sentences(new ClassFile(nowhere.project(), nowhere.setup(), null, nowhere.materials(), nowhere.suppliers()), TORCH))
                .anyMatch(s -> s.contains("needs an extractor, and no room is chosen yet."));
    }

    /** What each hazard asks of the air, against what each room has. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            EXTRACTOR | NONE      | Fumes needs an extractor, and Shed has no ventilation. Change the room, or leave out the step.
            EXTRACTOR | WINDOWS   | Fumes needs an extractor, and Shed has windows that open. Change the room, or leave out the step.
            EXTRACTOR | EXTRACTOR | -
            EXTRACTOR | -         | Fumes needs an extractor, and nothing is said of the air in Shed. Ask the venue.
            WINDOWS   | NONE      | Fumes needs windows that open, and Shed has no ventilation. Change the room, or leave out the step.
            WINDOWS   | WINDOWS   | -
            WINDOWS   | -         | -
            -         | NONE      | -
            """)
    void asksForTheAirThatAHazardNeeds(Ventilation needed, Ventilation there, String advice) throws IOException {
        List<Advice> found = SafetyAdvice.of(file(13, there), null, List.of(fumes(needed, 13)));
        assertThat(found).extracting(Advice::about).containsOnly("Safety");
        assertThat(found).extracting(said -> said.sentence().toString()).filteredOn(s -> s.startsWith("Fumes")).isEqualTo(advice == null ? List.of() : List.of(advice));
    }

    @Test
    void warnsOfStudentsBelowTheAgeOfAHazard() throws IOException {
        assertThat(sentences(file(12, null), fumes(null, 13))).contains("Fumes: usually not under 13 years even when closely supervised; the youngest is 12.");
        assertThat(sentences(file(13, null), fumes(null, 13))).noneMatch(s -> s.startsWith("Fumes"));
        assertThat(sentences(file(12, null), fumes(null, null))).noneMatch(s -> s.startsWith("Fumes"));
    }

    private static HazardSpec fumes(Ventilation needed, Integer age) {
        return new HazardSpec("fumes", "Fumes", null, null, null, null, null, null, null, null, null, needed, null, age, null, null, null, null, null);
    }

    @Test
    void saysWhereNoHazardIsNamed() throws IOException {
        ObjectNode whole = SpecFormat.yaml().valueToTree(file(null, Ventilation.EXTRACTOR));
        whole.findParents("hazards").forEach(place -> ((ObjectNode) place).remove("hazards"));
        assertThat(sentences(SpecFormat.yaml().treeToValue(whole, ClassFile.class))).anyMatch(s -> s.contains("the risk assessment is empty"));
        assertThat(sentences(file(null, Ventilation.EXTRACTOR), SOLVENT)).noneMatch(s -> s.contains("the risk assessment is empty"));
    }

    @Test
    void saysWhichHazardTheLibraryDoesNotKnowAndWhereItStands() throws IOException {
        HazardIndex uses = HazardIndex.of(file(null, Ventilation.EXTRACTOR));
        assertThat(SafetyAdvice.unknown(uses, uses.ids())).isEmpty();
        Set<String> without = new HashSet<>(uses.ids());
        without.remove("epoxy");
        without.add("epoxi");
        assertThat(SafetyAdvice.unknown(uses, without)).singleElement().satisfies(advice -> assertThat(advice.sentence().toString())
                .startsWith("“epoxy” is not in the hazard library. Did you mean “epoxi”?").contains("It stands with the work as a whole, "));
        assertThat(SafetyAdvice.unknown(uses, without)).allMatch(Advice::isSafety);
        assertThat(new Advice("Seats", "Twelve sit at ten places.").isSafety()).isFalse();
    }

    @Test
    void warnsOfAPieceThatGoesHomeUncured() throws IOException {
        assertThat(sentences(file(null, Ventilation.EXTRACTOR), SOLVENT)).containsExactly(
                "“Full cure at home” ends at home: tell students what still cures, how to carry it and until when. The handout says so.");
    }

    @Test
    void saysNothingOfAWaitThatMayEndAtHomeButEndsInClass() throws IOException {
        VenueSpec studio = SpecFormat.yaml().treeToValue(SpecFormat.yaml().readTree(Files.readString(Path.of("sample-classes/venues/boatshed-studio.yaml"))), VenueSpec.class);
        ClassFile home = read(SpecFormat.yaml().valueToTree(file(null, null)), studio);
        assertThat(SafetyAdvice.of(home, ComputedPlans.of(home).lesson(), List.of(SOLVENT))).hasSize(1);
        ObjectNode whole = SpecFormat.yaml().valueToTree(home);
        whole.get("project").get("steps").forEach(step -> {
            if (step.path("at_home").asBoolean()) {
                ((ObjectNode) step).put("lasts", "1 min");
            }
        });
        ClassFile quick = read(whole, studio);
        assertThat(ComputedPlans.of(quick).lesson()).isNotNull();
        assertThat(SafetyAdvice.of(quick, ComputedPlans.of(quick).lesson(), List.of(SOLVENT))).isEmpty();
    }

    private static List<String> sentences(ClassFile file, HazardSpec... hazards) {
        return SafetyAdvice.of(file, null, List.of(hazards)).stream().map(advice -> advice.sentence().toString()).toList();
    }

    private static ClassFile file(Integer youngest, Ventilation air) throws IOException {
        ObjectNode whole = SpecFormat.yaml().createObjectNode();
        whole.set("project", SpecFormat.yaml().readTree(Files.readString(Path.of("sample-classes/projects/resin-pendant.yaml"))));
        whole.set("class", SpecFormat.yaml().readTree(Files.readString(Path.of("sample-classes/classes/resin-pendants-two-evenings.yaml"))).get("class"));
        ArrayNode steps = (ArrayNode) whole.get("project").get("steps");
        steps.insert(steps.size() - 1, SpecFormat.yaml().readTree("{id: cure_at_home, title: Full cure at home, kind: wait, lasts: 72 h, at_home: true, after: [{step: polish}]}"));
        if (youngest != null) {
            ((ObjectNode) whole.get("class")).put("youngest", youngest);
        }
        return read(whole, new VenueSpec("Shed", null, 8, 4, air, true, true, null, null, null, null, null));
    }

    private static ClassFile read(ObjectNode whole, VenueSpec venue) throws JsonProcessingException {
        ClassFile file = SpecFormat.yaml().treeToValue(whole, ClassFile.class);
        return new ClassFile(file.project(), file.setup(), venue, file.materials(), file.suppliers());
    }
}
