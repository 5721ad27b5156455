package benchful.core.lesson;

/** What a step asks of the people in the room. */
public enum StepKind {
    /** The tutor demonstrates and all watch. */
    SHOW,
    /** Each student works at their own pace; the tutor helps. */
    MAKE,
    /** Drying, curing, soaking, cooling: nobody's hands. */
    WAIT,
    /** Class and tutor do it together: welcome, safety talk, tidying. */
    TOGETHER,
    /** The tutor does it before the class. */
    AHEAD
}
