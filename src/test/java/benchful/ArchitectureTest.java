package benchful;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.INTERFACES;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_FIELD_INJECTION;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import jakarta.ws.rs.Path;

/** Who may import whom, and what no class does. Each rule says its reason; an exception stands on the code, not here. */
@AnalyzeClasses(packages = "benchful", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule coreIsPlainJava = noClasses()
            .that().resideInAPackage("benchful.core..")
            .should().dependOnClassesThat(not(resideInAPackage("benchful.core..")
                    .or(resideInAPackage("java.."))
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
    static final ArchRule featuresHaveNoCycles = slices().matching("benchful.(*)..").should().beFreeOfCycles()
            .because("a feature is changed alone");

    @ArchTest
    static final ArchRule enginesHaveNoCycles = slices().matching("benchful.core.(*)..").should().beFreeOfCycles()
            .because("an engine is understood alone");

    @ArchTest
    static final ArchRule featuresPointDown = layeredArchitecture().consideringOnlyDependenciesInLayers()
            .layer("home").definedBy("benchful.home..")
            .layer("samples").definedBy("benchful.samples..")
            .layer("backups").definedBy("benchful.backups..")
            .layer("documents").definedBy("benchful.documents..")
            .layer("reviews").definedBy("benchful.reviews..")
            .layer("assessments").definedBy("benchful.assessments..")
            .layer("orders").definedBy("benchful.orders..", "benchful.packing..", "benchful.batches..")
            .layer("plans").definedBy("benchful.plans..")
            .layer("classes").definedBy("benchful.classes..")
            .layer("sheets").definedBy("benchful.projects..", "benchful.hazards..", "benchful.venues..", "benchful.stock..")
            .layer("catalogue").definedBy("benchful.catalogue..")
            .layer("web").definedBy("benchful.web..")
            .layer("core").definedBy("benchful.core..")
            .whereLayer("home").mayNotBeAccessedByAnyLayer()
            .whereLayer("samples").mayOnlyBeAccessedByLayers("home")
            .whereLayer("backups").mayOnlyBeAccessedByLayers("home")
            .whereLayer("documents").mayOnlyBeAccessedByLayers("home", "samples")
            .whereLayer("reviews").mayOnlyBeAccessedByLayers("home", "samples")
            .whereLayer("assessments").mayOnlyBeAccessedByLayers("home", "documents")
            .whereLayer("orders").mayOnlyBeAccessedByLayers("home", "documents")
            .whereLayer("plans").mayOnlyBeAccessedByLayers("home", "samples", "documents", "reviews", "assessments", "orders")
            .whereLayer("classes").mayOnlyBeAccessedByLayers("home", "samples", "documents", "reviews", "assessments", "orders", "plans")
            .withOptionalLayers(true)
            .because("what is computed and printed depends on what is stored, never the other way round");

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
