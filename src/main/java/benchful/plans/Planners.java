package benchful.plans;

import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.order.ListPlanner;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;

/** Chooses the lesson planner that the program uses. */
@ApplicationScoped
class Planners {
    @Produces
    @ApplicationScoped
    LessonPlanner lessons() {
        return new ListPlanner();
    }
}
