package benchful.plans;

import benchful.core.lesson.order.ListPlanner;

/** Plans computed as the program does, without the program around them. */
public final class ComputedPlans {
    private ComputedPlans() {}

    public static ClassPlan of(ClassFile file) {
        return new ClassPlanner(new ListPlanner()).plan(file);
    }
}
