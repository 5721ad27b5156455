package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.lesson.LessonPlanner;
import benchful.plans.ClassPlanner;
import benchful.web.tasks.Asker;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** What would help a class, worked out beside the pages; given up as soon as the class is another. */
@ApplicationScoped
public class AdviceTasks {
    private final ClassPlanner planner;
    private final LessonPlanner lessons;
    private final BackgroundTasks tasks;

    AdviceTasks(ClassPlanner planner, LessonPlanner lessons, BackgroundTasks tasks) {
        this.planner = planner;
        this.lessons = lessons;
        this.tasks = tasks;
    }

    /** The one under way or finished for the same file, or a new one. */
    BackgroundTask<Optional<SuggestionList>> of(CraftClass craftClass, ClassFile file) {
        return tasks.send(purpose(craftClass), file, task -> Asker.during(task::isGivenUp,
                () -> planner.promised(file).map(now -> new ClassAdvisor(lessons, file).suggestions(planner.rested(file), now, task))));
    }

    public void keepOnlyFor(CraftClass craftClass, ClassFile file) {
        tasks.keepOnlyFor(purpose(craftClass), file);
    }

    private static String purpose(CraftClass craftClass) {
        return "suggestions for class " + craftClass.id();
    }
}
