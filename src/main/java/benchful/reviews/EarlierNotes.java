package benchful.reviews;

import benchful.core.learning.PlannedStep;
import benchful.projects.Project;
import benchful.web.StoredEntity;
import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the tutor noted after the latest classes of a project, to be read where it is planned, printed or written again. */
@Named("notes")
@ApplicationScoped
@Unremovable
public class EarlierNotes {
    private static final int MOST_CLASSES = 5;

    /**
     * @param about the step that it is of; empty for the whole class
     */
    @TemplateData
    public record Note(long craftClass, LocalDate day, String about, String text) {
        /** "Knot the strand: bring a second weight". */
        public String words() {
            return about.isEmpty() ? text : about + ": " + text;
        }
    }

    /** The latest class first; a review that can't be read is left out here and told on its own page. */
    public List<Note> of(long project) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, project).stream()
                .flatMap(p -> Review.latest(p, MOST_CLASSES).stream()).flatMap(EarlierNotes::of).toList());
    }

    private static Stream<Note> of(Review review) {
        Optional<ReviewSpec> read = review.readable();
        if (read.isEmpty()) {
            return Stream.empty();
        }
        LocalDate day = review.craftClass().startsAt().toLocalDate();
        List<Note> notes = new ArrayList<>();
        if (read.get().notes() != null) {
            notes.add(new Note(review.craftClass().id(), day, "", read.get().notes()));
        }
        for (PlannedStep step : review.plan().steps()) {
            ReviewSpec.StepNote note = read.get().steps().get(step.key());
            if (note != null && note.note() != null) {
                notes.add(new Note(review.craftClass().id(), day, step.name(), note.note()));
            }
        }
        return notes.stream();
    }
}
