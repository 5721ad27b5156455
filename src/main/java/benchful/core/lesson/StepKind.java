package benchful.core.lesson;

/** What a step asks of the people in the room. What sets the kinds apart is decided here, for each of them. */
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
    AHEAD,
    /** The tutor does it outside the meetings: fires, takes out of moulds, gives a second coat. */
    BETWEEN,
    /** Each student does it at home. */
    HOMEWORK,
    /** The piece is fetched or posted after the last meeting. */
    COLLECT;

    /** Whether it takes the hands or eyes of the class. */
    public boolean needsClass() {
        return switch (this) {
            case SHOW, MAKE, TOGETHER -> true;
            case WAIT, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether each student does it, for their own piece and in their own time. */
    public boolean isOwnWork() {
        return switch (this) {
            case MAKE -> true;
            case SHOW, WAIT, TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether all do it at once, led by the tutor. */
    public boolean isGathering() {
        return switch (this) {
            case SHOW, TOGETHER -> true;
            case MAKE, WAIT, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether it goes on without anybody's hands. */
    public boolean isUnattended() {
        return switch (this) {
            case WAIT -> true;
            case SHOW, MAKE, TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether it is over before the class begins. */
    public boolean isBeforeClass() {
        return switch (this) {
            case AHEAD -> true;
            case SHOW, MAKE, WAIT, TOGETHER, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether the tutor may have it done before the class instead. */
    public boolean mayBePrepared() {
        return switch (this) {
            case MAKE, WAIT -> true;
            case SHOW, TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
        };
    }

    /** Whether it takes somebody's hands, but outside the meetings. */
    public boolean isOutside() {
        return switch (this) {
            case BETWEEN, HOMEWORK, COLLECT -> true;
            case SHOW, MAKE, WAIT, TOGETHER, AHEAD -> false;
        };
    }

    /** Whether it takes the tutor's time for each student beside what it takes for all. */
    public boolean growsWithStudents() {
        return isGathering() || isBeforeClass() || this == BETWEEN;
    }
}
