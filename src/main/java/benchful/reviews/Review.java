package benchful.reviews;

import benchful.bin.EarlierVersion;
import benchful.classes.ClassLine;
import benchful.classes.CraftClass;
import benchful.core.day.Course;
import benchful.core.day.Tap;
import benchful.core.learning.Actual;
import benchful.core.learning.ClassReviewer;
import benchful.core.learning.Counted;
import benchful.core.learning.Pause;
import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepReview;
import benchful.day.Days;
import benchful.plans.stored.KeptPlan;
import benchful.projects.Project;
import benchful.web.EditedEntity;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToOne;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** The review of one class: typed after it, put beside the kept plan, and read together with those of other classes. */
@Entity
public class Review extends EditedEntity {
    /** More than a tutor teaches in some years. */
    private static final int MOST = 300;

    @OneToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    KeptPlan plan;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<ReviewSpec> sheet;

    /** Its versions count from 1, so that a form that began with a blank review, version 0, is told from one that began with this. */
    protected Review() {
        version = 1;
    }

    /** A review of a class that is not stored yet. */
    public static Review of(CraftClass craftClass, KeptPlan plan, ReviewSpec sheet) {
        Review review = new Review();
        review.craftClass = craftClass;
        review.plan = plan;
        review.sheet = Stored.of(sheet);
        return review;
    }

    public static Optional<Review> of(CraftClass craftClass) {
        return find("craftClass", craftClass).firstResultOptional();
    }

    /** Classes that have ended and have no review, the latest first. */
    public static List<ClassLine> missing(LocalDateTime moment, int most) {
        return CraftClass.lines("c.endsAt < :moment and not exists (select 1 from Review r where r.craftClass = c) order by c.startsAt desc, c.id")
                .setParameter("moment", moment).setMaxResults(most).getResultList();
    }

    /** The reviews of all classes of a project, in order of time. */
    public static List<Review> of(Project project) {
        return list("from Review r join fetch r.craftClass c left join fetch c.venue join fetch r.plan where c.project = ?1 order by c.startsAt, c.id", project);
    }

    /** The reviews of the latest classes of all projects, in order of time. */
    static List<Review> lately() {
        List<Review> latest = Review.<Review>find("from Review r join fetch r.craftClass c join fetch c.project join fetch r.plan order by c.startsAt desc, c.id desc")
                .page(0, MOST).list();
        Collections.reverse(latest);
        return latest;
    }

    /** Own words of why in the reviews written last, the most used first. */
    static List<String> reasons() {
        Map<String, Integer> used = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        Review.<Review>find("order by id desc").page(0, MOST).stream().flatMap(r -> r.sheet.readable().stream()).flatMap(s -> s.reasons().stream()).forEach(why -> used.merge(why, 1, Integer::sum));
        return used.entrySet().stream().sorted(Map.Entry.<String, Integer>comparingByValue().reversed()).map(Map.Entry::getKey).toList();
    }

    /** The reviews of the latest classes of a project, the latest first. */
    public static List<Review> latest(Project project, int most) {
        return Review.<Review>find("from Review r join fetch r.craftClass c join fetch r.plan where c.project = ?1 order by c.startsAt desc, c.id desc", project)
                .page(0, most).list();
    }

    /** The classes of a project that have a review, in order of time. */
    static List<ClassLine> reviewed(Project project) {
        return CraftClass.lines("p = :project and exists (select 1 from Review r where r.craftClass = c) order by c.startsAt, c.id")
                .setParameter("project", project).getResultList();
    }

    void replace(ReviewSpec newSheet) {
        EarlierVersion.keep("review", isStored() ? craftClass.id() : null, Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
    }

    public CraftClass craftClass() {
        return craftClass;
    }

    public KeptPlan plan() {
        return plan;
    }

    /**
     * What was typed, by the keys of the planned steps.
     *
     * @throws benchful.web.Unusable where what is stored can't be read
     */
    public ReviewSpec sheet() {
        return sheet.read("the review of this class", null).of(plan.steps());
    }

    /** What was typed, where it and the plan beside it can be read. */
    Optional<ReviewSpec> readable() {
        return plan.isReadable() ? sheet.readable().map(s -> s.of(plan.steps())) : Optional.empty();
    }

    /** Planned against actual, in order of the planned start. */
    public List<StepReview> steps() {
        return steps(List.of());
    }

    /** @param counted who had finished when */
    public List<StepReview> steps(List<Tap> counted) {
        LocalDateTime start = plan.file().setup().meetings().get(0).date()
                .atTime(sheet().began() == null ? plan.file().setup().meetings().get(0).starts() : sheet().began());
        Map<String, ReviewSpec.StepNote> notes = sheet().steps();
        List<Actual> typed = plan.steps().stream().filter(p -> notes.containsKey(p.key())).map(p -> actual(p, notes.get(p.key()))).toList();
        return new ClassReviewer(start, pauses()).review(plan.steps(), typed, plan.steps().stream().flatMap(p -> counted(p, counted)).toList());
    }

    private static Stream<Counted> counted(PlannedStep planned, List<Tap> all) {
        return all.stream().filter(tap -> planned.key().equals(tap.step())).map(tap -> new Counted(planned.key(), onItsDay(planned, tap.at().toLocalTime()), tap.number()));
    }

    private static Actual actual(PlannedStep planned, ReviewSpec.StepNote note) {
        return new Actual(planned.key(), note.took(), note.ended() == null ? null : onItsDay(planned, note.ended()));
    }

    /** A class that runs past midnight is none that this trade knows; the planned day is the day. */
    private static LocalDateTime onItsDay(PlannedStep planned, LocalTime ended) {
        return planned.end().toLocalDate().atTime(ended);
    }

    /** A break of which nothing was noted was as planned. */
    private Pause asItWas(Course.Pause planned) {
        ReviewSpec.BreakNote note = sheet().breaks().getOrDefault(planned.key(), new ReviewSpec.BreakNote(null, null));
        LocalDateTime began = note.began() == null ? planned.start() : planned.start().toLocalDate().atTime(note.began());
        return new Pause(began, began.plus(note.took() == null ? planned.length() : note.took()));
    }

    private List<Pause> pauses() {
        List<Pause> pauses = new ArrayList<>(Days.breaks(plan).stream().map(this::asItWas).toList());
        LocalDateTime last = null;
        for (var m : plan.file().setup().meetings()) {
            LocalDateTime start = m.date().atTime(m.starts());
            if (last != null) {
                pauses.add(new Pause(last, start));
            }
            last = m.date().atTime(m.ends());
        }
        return pauses;
    }
}
