package benchful.core.lesson.order.model;

/** Who has to be there for an activity, and so in which hours it may stand. */
public enum Presence {
    /** The class, without a break in it. */
    CLASS,
    /** The class, which may put it down for a break or until the next meeting. */
    CLASS_WITH_BREAKS,
    /** Nobody, but it is begun in a meeting. */
    BEGUN_IN_MEETING,
    /** Nobody: it begins wherever what it follows ends, between meetings too. */
    NOBODY,
    /** Somebody outside the meetings, and before the last of them. */
    BEFORE_LAST_MEETING,
    /** Somebody outside the meetings. */
    OUTSIDE,
    /** Whoever collects or posts, after the last meeting. */
    AFTER_LAST_MEETING;

    public boolean isOutside() {
        return this == BEFORE_LAST_MEETING || this == OUTSIDE || this == AFTER_LAST_MEETING;
    }
}
