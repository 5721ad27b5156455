package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.lesson.LessonPlan;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** Asked by the page of a class: what earlier classes of its project showed. Who reviews them answers. */
public interface Experience {

    /** @param plan null where the class can't be planned */
    Known of(CraftClass craftClass, ClassFile file, LessonPlan plan);

    /**
     * @param proposal what to change in the project; null where nothing is proposed
     * @param notes what was noted after earlier classes, the latest first
     * @param source of the minutes that the class is planned with, in a sentence
     */
    @TemplateData
    record Known(Proposal proposal, List<Line> notes, String source) {
        public Known {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Other minutes for steps of the project, and for what the class has for itself.
     *
     * @param classes how many showed them
     * @param now when the class ends as it is planned now
     * @param then when it would end with them
     * @param version of the project that they are for
     * @param fingerprint tells these proposals from any others
     */
    @TemplateData
    record Proposal(int classes, LocalDateTime now, LocalDateTime then, List<Change> changes, long version, String fingerprint) {
        public Proposal {
            changes = List.copyOf(changes);
        }

        /** Whether the end moves at all, to the minute. */
        public boolean moves() {
            return !now.equals(then);
        }

        /** Whether anything would be changed in the project; and {@link #ofClass} in the class itself. */
        public boolean ofProject() {
            return changes.stream().anyMatch(c -> !c.ofClass());
        }

        public boolean ofClass() {
            return changes.stream().anyMatch(Change::ofClass);
        }
    }

    /**
     * @param before as it stands in the project or the class, and {@code after} as it is proposed
     * @param moves by how much it alone moves the end of the class; empty where that is not said
     * @param ofClass whether it is the class that would be changed
     */
    @TemplateData
    record Change(String title, String before, String after, String moves, boolean ofClass) {}

    /** A note on the day of its class. */
    @TemplateData
    record Line(long craftClass, LocalDate day, String words) {}
}
