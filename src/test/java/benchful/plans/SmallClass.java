package benchful.plans;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetupBuilder;
import benchful.classes.Promise;
import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import benchful.projects.Step;
import benchful.projects.Tool;
import benchful.venues.VenueSpec;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The file of a class as a test needs it: a hanger for beginners, made on one evening from 18:00 to 21:00, in a room that nobody
 * has chosen yet; the test says what else there is. Without sizes of its own it has one, called "One".
 */
public final class SmallClass {
    private final int headcount;
    private final List<Size> sizes = new ArrayList<>();
    private final List<MaterialLine> lines = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<ClassSetup.Student> students = new ArrayList<>();
    private final List<ClassSetup.Break> breaks = new ArrayList<>();
    private ClassSetup.Rest rest;
    private final List<ClassSetup.Meeting> meetings = new ArrayList<>();
    private final List<String> ahead = new ArrayList<>();
    private final List<MaterialSpec> materials = new ArrayList<>();
    private final Map<String, Integer> mix = new LinkedHashMap<>();
    private final Map<String, Integer> brought = new LinkedHashMap<>();
    private SkillLevel writtenFor = SkillLevel.BEGINNER;
    private SkillLevel level = SkillLevel.BEGINNER;
    private Integer minimumAge;
    private Integer youngest;
    private int helpers;
    private int groups = 1;
    private boolean ownPace;
    private BigDecimal share;
    private Promise promise;
    private VenueSpec venue;
    private BigDecimal delivery;

    private SmallClass(int headcount) {
        this.headcount = headcount;
    }

    public static SmallClass of(int students) {
        return new SmallClass(students);
    }

    /** @param measures names and values in turn: "length", "50 cm" */
    public SmallClass size(String name, String... measures) {
        Map<String, Quantity> values = new LinkedHashMap<>();
        for (int i = 0; i < measures.length; i += 2) {
            values.put(measures[i], Quantity.parse(measures[i + 1]));
        }
        sizes.add(new Size(name, values));
        return this;
    }

    /** So many students, not known by name, make this size. */
    public SmallClass want(String size, int students) {
        mix.put(size, students);
        return this;
    }

    /** @param size null for the first */
    public SmallClass student(String name, String size) {
        students.add(ClassSetup.Student.named(name).withSize(size));
        return this;
    }

    public SmallClass knows(ClassSetup.Student... named) {
        students.addAll(List.of(named));
        return this;
    }

    public SmallClass promises(Promise kept) {
        promise = kept;
        return this;
    }

    public SmallClass takes(String material, String amount) {
        return line(MaterialLine.of(material, amount));
    }

    /** @param waste percentage; null for none */
    public SmallClass shares(String material, String amount, String waste) {
        return line(MaterialLine.of(material, amount).withShared(true).withWaste(waste == null ? null : new BigDecimal(waste)));
    }

    public SmallClass line(MaterialLine line) {
        lines.add(line);
        return this;
    }

    public SmallClass ownTool(String name) {
        tools.add(new Tool(name, true, null, null));
        return this;
    }

    public SmallClass sharedTool(String name) {
        tools.add(new Tool(name, false, null, null));
        return this;
    }

    public SmallClass brings(String tool, int number) {
        brought.put(tool, number);
        return this;
    }

    public SmallClass step(Step step) {
        steps.add(step);
        return this;
    }

    public SmallClass shows(String id, int minutes) {
        return step(step(id, StepKind.SHOW, minutes, null, null, null));
    }

    /** @param usual minutes of one student; the quick need half, the slow twice as long */
    public SmallClass makes(String id, int usual) {
        return step(step(id, StepKind.MAKE, 0, times(usual), null, null));
    }

    /** All need just as long. */
    public SmallClass makesIn(String id, int minutes) {
        return step(step(id, StepKind.MAKE, 0, new Step.StudentTime(Duration.ofMinutes(minutes), Duration.ofMinutes(minutes), Duration.ofMinutes(minutes)), null, null));
    }

    /** @param share of the students who must be done before the class moves on */
    public SmallClass makes(String id, int usual, String share) {
        return step(step(id, StepKind.MAKE, 0, times(usual), null, new BigDecimal(share)));
    }

    /** @param repeats formula */
    public SmallClass repeats(String id, int usual, String repeats) {
        return step(step(id, StepKind.MAKE, 0, times(usual), repeats, null));
    }

    static Step.StudentTime times(int usual) {
        return new Step.StudentTime(Duration.ofSeconds(usual * 30L), Duration.ofMinutes(usual), Duration.ofMinutes(usual * 2L));
    }

    private static Step step(String id, StepKind kind, int minutes, Step.StudentTime student, String repeats, BigDecimal share) {
        return Step.of(id, "The " + id, kind).withLasts(student == null ? Duration.ofMinutes(minutes) : null).withStudent(student)
                .withRepeats(repeats).withShare(share);
    }

    public SmallClass ahead(String step) {
        ahead.add(step);
        return this;
    }

    public SmallClass meets(LocalDate day, LocalTime from, LocalTime to) {
        meetings.add(new ClassSetup.Meeting(day, from, to));
        return this;
    }

    public SmallClass rests(LocalTime at, int minutes) {
        breaks.add(new ClassSetup.Break(at, Duration.ofMinutes(minutes)));
        return this;
    }

    /** By a rule, in minutes. */
    public SmallClass restsAfter(int work, int minutes) {
        rest = new ClassSetup.Rest(Duration.ofMinutes(work), Duration.ofMinutes(minutes));
        return this;
    }

    public SmallClass writtenFor(SkillLevel practised) {
        writtenFor = practised;
        return this;
    }

    public SmallClass level(SkillLevel practised) {
        level = practised;
        return this;
    }

    public SmallClass from(int years) {
        minimumAge = years;
        return this;
    }

    public SmallClass youngest(int years) {
        youngest = years;
        return this;
    }

    public SmallClass helpers(int number) {
        helpers = number;
        return this;
    }

    public SmallClass groups(int number) {
        groups = number;
        return this;
    }

    public SmallClass ownPace() {
        ownPace = true;
        return this;
    }

    public SmallClass share(String ofTheClass) {
        share = new BigDecimal(ofTheClass);
        return this;
    }

    /** @param seats null where nobody counted them */
    public SmallClass in(String room, Integer seats, Map<String, Integer> itsTools) {
        venue = new VenueSpec(room, null, seats, null, null, null, null, itsTools, null, null, null, null);
        return this;
    }

    public SmallClass catalogued(MaterialSpec material) {
        materials.add(material);
        return this;
    }

    /** In packs of one size, from "Loft", who takes three days and nothing for minimum or VAT. */
    public SmallClass sold(String material, String holds, String price) {
        Quantity pack = Quantity.parse(holds);
        return catalogued(MaterialSpec.of(material, pack.unit()).withOffers(List.of(Offer.of("Loft", pack, new BigDecimal(price)))));
    }

    /** @param charge of "Loft" for one delivery */
    public SmallClass delivered(String charge) {
        delivery = new BigDecimal(charge);
        return this;
    }

    public ClassFile file() {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Hanger").craft("macrame").level(writtenFor)
                .minimumAge(minimumAge).sizes(sizes.isEmpty() ? List.of(new Size("One", null)) : sizes).materials(lines)
                .tools(tools).steps(steps).build();
        List<ClassSetup.Meeting> hours = meetings.isEmpty()
                ? List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))) : meetings;
        ClassSetup setup = ClassSetupBuilder.builder().title("Evening").meetings(hours).headcount(headcount).level(level)
                .sizes(mix).students(students).helpers(helpers).groups(groups).ownPace(ownPace).share(share).promise(promise).breaks(breaks).rest(rest)
                .preparedAhead(ahead).tools(brought).currency("GBP").youngest(youngest).build();
        return new ClassFile(project, setup, venue, materials, List.of(new SupplierSpec("Loft", "GBP", null, delivery, null, 3, false, null, null, null)));
    }
}
