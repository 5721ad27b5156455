package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.advice.Progress;
import benchful.web.tasks.Asker;
import benchful.web.tasks.Errand;
import benchful.web.tasks.Errands;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** What would help a class, worked out beside the pages; given up as soon as the class is another. */
@ApplicationScoped
public class AdviceErrands {
    private final LessonPlanner lessons;
    private final Errands errands;

    AdviceErrands(LessonPlanner lessons, Errands errands) {
        this.lessons = lessons;
        this.errands = errands;
    }

    /** The one under way or finished for the same file, or a new one. */
    Errand<Optional<Suggestions>> of(CraftClass craftClass, ClassFile file) {
        return errands.send(purpose(craftClass), file, errand -> Asker.during(errand::isGivenUp, () -> new ClassAdvisor(lessons, file).suggestions(progress(errand))));
    }

    public void keepOnlyFor(CraftClass craftClass, ClassFile file) {
        errands.keepOnlyFor(purpose(craftClass), file);
    }

    private static String purpose(CraftClass craftClass) {
        return "suggestions for class " + craftClass.id();
    }

    private static Progress progress(Errand<?> errand) {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return errand.isGivenUp();
            }

            @Override
            public void tried(int done, int all) {
                errand.tell(done, all);
            }
        };
    }
}
