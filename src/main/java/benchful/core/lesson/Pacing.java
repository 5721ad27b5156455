package benchful.core.lesson;

/** How students go from one make step to the next. */
public enum Pacing {
    /** The class (or group) moves on together when as many as must have finished: what the timed plan shows. */
    TOGETHER,
    /** Each student goes on alone and gathers with the others only for what is shown or done together. */
    OWN_PACE
}
