package benchful.documents.parts;

import benchful.assessments.AssessmentPrint;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.LessonPlan;
import benchful.plans.PlanParts;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import benchful.projects.pictures.Picture;
import benchful.studio.StudioSpec;
import benchful.web.Formats;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What print-outs are filled from.
 *
 * @param plan of which only that is worked out which is printed
 * @param pictures of the project, by name, with their content
 * @param hazards what is said of each hazard that the class meets, by id
 * @param assessment of its risks; null where that is not what is printed
 * @param studio     who teaches
 * @param sign       the picture of the studio's sign; null for none
 * @param notes      what was noted after earlier classes of the project, each with its day
 * @param batch      of kits for sale, what tells theirs from others: "Kits 12, packed on Sat 6 Mar 2027"; null for what is not for sale
 */
public record PrintSource(
        ClassFile file, PlanParts plan, Map<String, Picture> pictures, Map<String, HazardNote> hazards, AssessmentPrint assessment, StudioSpec studio, Picture sign,
        List<String> notes, String batch) {
    public PrintSource {
        pictures = Map.copyOf(pictures);
        hazards = Map.copyOf(hazards);
        notes = List.copyOf(notes);
    }

    /** Of a studio of which nothing is known. */
    public PrintSource(ClassFile file, PlanParts plan, Map<String, Picture> pictures, Map<String, HazardNote> hazards, AssessmentPrint assessment) {
        this(file, plan, pictures, hazards, assessment, StudioSpec.NONE, null, List.of(), null);
    }

    /** The same of a studio. */
    public PrintSource of(StudioSpec teaching, Picture itsSign) {
        return new PrintSource(file, plan, pictures, hazards, assessment, teaching, itsSign, notes, batch);
    }

    /** The same of a project that was taught before. */
    public PrintSource withNotes(List<String> earlier) {
        return new PrintSource(file, plan, pictures, hazards, assessment, studio, sign, earlier, batch);
    }

    /** The same of kits that are sold. */
    public PrintSource forSale(String itsBatch) {
        return new PrintSource(file, plan, pictures, hazards, assessment, studio, sign, notes, itsBatch);
    }

    /** Whether it is of a class, which meets; a project alone and kits for sale do not. */
    public boolean isClass() {
        return batch == null && !file.setup().meetings().isEmpty();
    }

    /** Null where the steps, tools and hours contradict each other, and where there is no class. */
    public LessonPlan lesson() {
        return plan.timing().lesson();
    }

    /** What each student takes. */
    public Requirements needs() {
        return plan.needs();
    }

    /** What is cut and bought as well. */
    public MaterialsPlan materials() {
        return plan.materials();
    }

    public String title() {
        String own = file.setup().title();
        return own == null || own.isBlank() ? file.project().name() : own;
    }

    /** "Sat 6 Mar 2027, 13:00 to 17:45"; with more meetings, how many there are. */
    String when() {
        List<ClassSetup.Meeting> meetings = file.setup().meetings();
        if (!isClass()) {
            return "";
        }
        return meetings.size() == 1 ? hours(meetings.get(0)) : hours(meetings.get(0)) + ", first of %d meetings".formatted(meetings.size());
    }

    /** Day and hours of one, the first being 0. */
    public String meeting(int index) {
        return hours(file.setup().meetings().get(index));
    }

    /** All of them: "Thu 18 Mar 2027, 18:30 to 21:00; Thu 25 Mar 2027, 18:30 to 20:30". */
    public String meetings() {
        return file.setup().meetings().stream().map(PrintSource::hours).collect(Collectors.joining("; "));
    }

    private static String hours(ClassSetup.Meeting meeting) {
        return "%s, %s to %s".formatted(Formats.words(meeting.date()), Formats.words(meeting.starts()), Formats.words(meeting.ends()));
    }

    String where() {
        return file.venue() == null ? "" : file.venue().name();
    }

    public Optional<HazardNote> hazard(String id) {
        return Optional.ofNullable(hazards.get(id));
    }
}
