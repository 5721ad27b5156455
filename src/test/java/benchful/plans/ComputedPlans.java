package benchful.plans;

import benchful.classes.ClassFile;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.order.ListPlanner;
import benchful.web.tasks.Memory;
import benchful.web.tasks.Workroom;

/** Plans computed as the program does, without the program around them. */
public final class ComputedPlans {
    private ComputedPlans() {}

    public static ClassPlan of(ClassFile file) {
        return planner(new ListPlanner()).plan(file);
    }

    public static ClassPlanner planner(LessonPlanner lessons) {
        return new ClassPlanner(new Remembered(lessons, new Memory(new Workroom(2, 10), 10_000)));
    }
}
