package benchful.projects;

/** What a step asks of the class. */
public enum StepKind {
    /** The tutor demonstrates; all watch. */
    SHOW,
    /** Each student works at their own pace. */
    MAKE,
    /** Drying, curing, soaking, cooling: nobody's hands. */
    WAIT,
    /** All together: welcome, safety talk, tidying. */
    TOGETHER,
    /** The tutor does it before the class. */
    AHEAD
}
