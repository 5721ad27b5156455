package benchful.core.lesson;

/** Puts the steps of a class in order and on the clock. The same request always gets the same plan. */
public interface LessonPlanner {

    LessonOutcome plan(LessonRequest request);
}
