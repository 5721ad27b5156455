package benchful;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.INTERFACES;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_FIELD_INJECTION;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

/** Who may import whom, and what no class does. Each rule says its reason; an exception stands on the code, not here. */
@AnalyzeClasses(packages = "benchful", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule coreIsPlainJava = noClasses()
            .that().resideInAPackage("benchful.core..")
            .should().dependOnClassesThat(not(resideInAPackage("benchful.core..")
                    .or(resideInAPackage("java.."))
                    .or(resideInAPackage("org.jspecify.annotations.."))
                    .or(resideInAPackage("org.joda.money.."))
                    .or(resideInAPackage("com.ezylang.evalex.."))
                    .or(resideInAPackage("com.google.ortools.."))
                    .or(resideInAPackage("com.google.protobuf.."))
                    .or(resideInAPackage("org.apache.commons.statistics.."))
                    .or(resideInAPackage("org.apache.commons.rng.."))
                    .or(resideInAPackage("org.apache.commons.numbers.."))))
            .because("the computations must be checked, reused and read without a framework or a database");

    @ArchTest
    static final ArchRule coreHasNoClockAndNoHiddenRandomness = noClasses()
            .that().resideInAPackage("benchful.core..")
            .should().callMethod(java.time.LocalDate.class, "now")
            .orShould().callMethod(java.time.LocalDateTime.class, "now")
            .orShould().callMethod(java.time.Instant.class, "now")
            .orShould().callMethod(Math.class, "random")
            .orShould().callConstructor(java.util.Random.class)
            .because("the same input must give the same answer");

    @ArchTest
    static final ArchRule coreTypesAreClosed = classes()
            .that().resideInAPackage("benchful.core..").and().areTopLevelClasses()
            .and(not(INTERFACES)).and(not(modifier(JavaModifier.ABSTRACT)))
            .should().haveModifier(JavaModifier.FINAL)
            .orShould().beEnums()
            .because("values and engines are records, enumerations, interfaces or final classes, not points of extension");

    @ArchTest
    static final ArchRule enginesShareOnlyQuantities = slices().matching("benchful.core.(*)..").should().notDependOnEachOther()
            .ignoreDependency(alwaysTrue(), resideInAPackage("benchful.core.quantity"))
            .because("an engine is understood, checked and reused alone");

    /** At every depth: a room with all its inner rooms is changed alone, and so is each inner room. */
    @ArchTest
    static void noCircleRunsBetweenRooms(JavaClasses house) {
        int deepest = Rooms.files().keySet().stream().mapToInt(room -> room.split("\\.").length).max().orElseThrow();
        for (int depth = 1; depth <= deepest; depth++) {
            slices().assignedFrom(Rooms.toDepth(depth)).should().beFreeOfCycles().because("a room is changed alone").check(house);
        }
    }

    /** What is computed and printed depends on what is stored, and all of it on the computations, never the other way round. */
    @ArchTest
    static void everyRoomLooksOnlyAtLowerFloors(JavaClasses house) {
        assertThat(Rooms.files().keySet()).as("rooms, each on its floor in Rooms.FLOORS")
                .containsExactlyInAnyOrderElementsOf(Rooms.FLOORS.stream().flatMap(List::stream).toList());
        assertThat(Rooms.upward(Rooms.arrows(house))).as("what a room looks at without it being on a lower floor").isEmpty();
    }

    /** Who looks for a class reads the names of one folder. */
    @ArchTest
    static void noRoomIsCrowded(JavaClasses house) {
        assertThat(Rooms.files()).as("source files of each room; from thirty on a room needs inner rooms")
                .allSatisfy((room, files) -> assertThat(files).isLessThan(30));
    }

    /** The picture can't age. */
    @ArchTest
    static void thePictureShowsTheRoomsAsTheyAre(JavaClasses house) throws IOException {
        String drawn = Rooms.drawn(Rooms.arrows(house));
        if (Boolean.getBoolean("benchful.rooms")) {
            Files.writeString(Rooms.PICTURE, drawn);
        }
        assertThat(Rooms.PICTURE).as("run mvn test -Dtest=ArchitectureTest -Dbenchful.rooms=true to renew it, and look at what changed").hasContent(drawn);
    }

    @ArchTest
    static final ArchRule webKnowsNoFeature = noClasses()
            .that().resideInAPackage("benchful.web..")
            .should().dependOnClassesThat(resideInAPackage("benchful..")
                    .and(not(resideInAPackage("benchful.web..").or(resideInAPackage("benchful.core..")))))
            .because("what pages share must not pull a feature along");

    @ArchTest
    static final ArchRule resourcesSayWhatTheyAre = classes().that().areAnnotatedWith(Path.class)
            .should().haveSimpleNameEndingWith("Pages").orShould().haveSimpleNameEndingWith("Api")
            .because("a reader of a URL finds its class by name");

    @ArchTest
    static final ArchRule entitiesKnowNoPages = noClasses().that().areAnnotatedWith(Entity.class)
            .should().dependOnClassesThat().resideInAnyPackage("jakarta.ws.rs..", "io.quarkus.qute..")
            .because("what is stored outlives how it is shown");

    @ArchTest
    static final ArchRule nobodyWritesToStandardStreams = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule nobodyThrowsGenericExceptions = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static final ArchRule nobodyInjectsIntoFields = NO_CLASSES_SHOULD_USE_FIELD_INJECTION;

    @ArchTest
    static final ArchRule nobodyUsesTheOldDate = fields().should().notHaveRawType(java.util.Date.class)
            .because("it has no zone, no precision and no value");
}
