package benchful.core.lesson;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One part of the making, named by an id that is unique in its lesson.
 * Lengths are never negative. Whether the steps agree with each other and with the room is not judged here but by the
 * planner, which answers with a {@link Contradiction} that names the steps at fault.
 */
public sealed interface Step {

    String id();

    String title();

    StepKind kind();

    /** Tools or equipment the step keeps busy; for a {@link Make} counted per student, for the others in all. */
    List<ToolUse> uses();

    /** How long it lasts; of a {@link Make} what one repeat usually takes, of a {@link Wait} the least of one load. */
    Duration length();

    /** What each student who takes part adds to {@link #length()}; nothing for most. */
    default Duration perStudent() {
        return Duration.ZERO;
    }

    /** How much longer than planned it may last at the most, each time; nothing where it always lasts as long. */
    default Duration over() {
        return Duration.ZERO;
    }

    /** How often it is given, one time after the other, so that so many students have seen it. */
    default int showings(int students) {
        return 1;
    }

    /**
     * The tutor demonstrates and the whole class watches; never interrupted by a break. Where more would watch than can, it is given
     * again, one showing right after the other; a class that works in groups is then shown it group by group.
     *
     * @param length     of one showing, however many watch
     * @param perStudent more for each of them
     * @param over       how much longer each showing may last at the most
     * @param watchers   how many can watch at once; 0 where all can
     * @param toGroups   whether the tutor chooses to show it group by group, however many can watch
     */
    record Show(String id, String title, Duration length, Duration perStudent, Duration over, List<ToolUse> uses, int watchers, boolean toGroups) implements Step {
        public Show {
            Guard.named(id, title);
            Guard.notNegative(length, title);
            Guard.notNegative(perStudent, title);
            Guard.notNegative(over, title);
            Guard.atLeast(0, watchers, "The number of students who can watch \"" + title + "\" at once");
            uses = List.copyOf(uses);
        }

        public Show(String id, String title, Duration length, Duration perStudent, Duration over, List<ToolUse> uses, int watchers) {
            this(id, title, length, perStudent, over, uses, watchers, false);
        }

        public Show(String id, String title, Duration length, Duration perStudent, Duration over, List<ToolUse> uses) {
            this(id, title, length, perStudent, over, uses, 0);
        }

        public Show(String id, String title, Duration length, Duration perStudent, List<ToolUse> uses) {
            this(id, title, length, perStudent, Duration.ZERO, uses);
        }

        public Show(String id, String title, Duration length, List<ToolUse> uses) {
            this(id, title, length, Duration.ZERO, uses);
        }

        public Show(String id, String title, Duration length) {
            this(id, title, length, List.of());
        }

        /** The same, shown group by group. */
        public Show eachGroup() {
            return new Show(id, title, length, perStudent, over, uses, watchers, true);
        }

        /** Whether so many can't all watch at once. */
        public boolean isTooCloseFor(int students) {
            return watchers > 0 && students > watchers;
        }

        @Override
        public int showings(int students) {
            return isTooCloseFor(students) ? (students + watchers - 1) / watchers : 1;
        }

        @Override
        public StepKind kind() {
            return StepKind.SHOW;
        }
    }

    /**
     * Each student makes it at their own pace; the class moves on when {@code finishShare} of the students are done.
     *
     * @param time        what one student needs, with help given at once
     * @param uses        tools each student uses all the while, in units per student
     * @param help        how often a student asks for help, and for how long; nothing where somebody stays beside each
     * @param finishShare share of the students, in (0, 1], that must have finished before the class moves on
     * @param mayPause    whether the work may be put down for a break or until the next meeting
     * @param beside      whether the tutor or a helper stays beside each student all the while: at a torch
     */
    record Make(String id, String title, StudentTime time, List<ToolUse> uses, Help help, double finishShare,
            boolean mayPause, boolean beside) implements Step {
        /** Whoever stays beside a student, as a tool that the step takes. */
        public static final ToolUse SOMEBODY = new ToolUse("tutor or helper", 1);

        public Make {
            Guard.named(id, title);
            Objects.requireNonNull(time, "time of " + title);
            Objects.requireNonNull(help, "help of " + title);
            if (!(finishShare > 0 && finishShare <= 1)) {
                throw new IllegalArgumentException("The share that finishes \"" + title + "\" must be above 0 and at most 1");
            }
            help = beside ? Help.NONE : help;
            uses = beside && !uses.contains(SOMEBODY) ? Stream.concat(uses.stream(), Stream.of(SOMEBODY)).toList() : List.copyOf(uses);
        }

        /** One that each student does alone. */
        public Make(String id, String title, StudentTime time, List<ToolUse> uses, Help help, double finishShare, boolean mayPause) {
            this(id, title, time, uses, help, finishShare, mayPause, false);
        }

        @Override
        public Duration length() {
            return time.usual();
        }

        /** How many of so many students must have finished before the class moves on. */
        public int mustFinish(int students) {
            return (int) Math.max(1, Math.ceil(finishShare * students - 1e-9));
        }

        /** For those who stay, by their seats. */
        public Make of(List<Integer> seats) {
            return new Make(id, title, time.of(seats), uses, help, finishShare, mayPause, beside);
        }

        public Make(String id, String title, StudentTime time) {
            this(id, title, time, List.of(), Help.NONE, 1, true);
        }

        @Override
        public StepKind kind() {
            return StepKind.MAKE;
        }
    }

    /**
     * Nobody's hands are needed for at least {@code least}; it runs across breaks and between meetings, and begins in a meeting.
     *
     * @param greatest  if given, every step that follows directly begins at most this long after the wait begins, and the
     *                  clock runs from the end of each step directly before it (an opened glue does not stop ageing)
     * @param uses      equipment that a load holds from its beginning until {@code least} has passed, in units
     * @param places    pieces that go into one load of the equipment; 0 where all go in at once
     * @param endsAtHome whether its end may lie after the class, as a take-home instruction: then it does not count to the finish
     */
    record Wait(String id, String title, Duration least, Optional<Duration> greatest, List<ToolUse> uses, int places,
            boolean endsAtHome) implements Step {
        public Wait {
            Guard.named(id, title);
            Guard.notNegative(least, title);
            greatest.ifPresent(length -> Guard.notNegative(length, title));
            Guard.atLeast(0, places, "The places of a load");
            uses = List.copyOf(uses);
        }

        @Override
        public Duration length() {
            return least;
        }

        /** All pieces at once. */
        public Wait(String id, String title, Duration least, Optional<Duration> greatest, List<ToolUse> uses, boolean endsAtHome) {
            this(id, title, least, greatest, uses, 0, endsAtHome);
        }

        public Wait(String id, String title, Duration least) {
            this(id, title, least, Optional.empty(), List.of(), false);
        }

        @Override
        public StepKind kind() {
            return StepKind.WAIT;
        }
    }

    /**
     * Class and tutor are busy; never interrupted by a break.
     *
     * @param length     however many they are
     * @param perStudent more for each student (handing out, washing up)
     */
    record Together(String id, String title, Duration length, Duration perStudent, Duration over, List<ToolUse> uses) implements Step {
        public Together {
            Guard.named(id, title);
            Guard.notNegative(length, title);
            Guard.notNegative(perStudent, title);
            Guard.notNegative(over, title);
            uses = List.copyOf(uses);
        }

        public Together(String id, String title, Duration length, Duration perStudent, List<ToolUse> uses) {
            this(id, title, length, perStudent, Duration.ZERO, uses);
        }

        public Together(String id, String title, Duration length, List<ToolUse> uses) {
            this(id, title, length, Duration.ZERO, uses);
        }

        public Together(String id, String title, Duration length) {
            this(id, title, length, List.of());
        }

        @Override
        public StepKind kind() {
            return StepKind.TOGETHER;
        }
    }

    /**
     * The tutor does it before the class; it takes no class time and is totalled in {@link Preparation}.
     *
     * @param length     however many will come
     * @param perStudent more for each of them, such as a kit to cut
     */
    record Ahead(String id, String title, Duration length, Duration perStudent) implements Step {
        public Ahead {
            Guard.named(id, title);
            Guard.notNegative(length, title);
            Guard.notNegative(perStudent, title);
        }

        public Ahead(String id, String title, Duration length) {
            this(id, title, length, Duration.ZERO);
        }

        @Override
        public List<ToolUse> uses() {
            return List.of();
        }

        @Override
        public StepKind kind() {
            return StepKind.AHEAD;
        }
    }

    /**
     * Done outside the meetings, in one piece: it begins at the end of a meeting or later, and ends before the next one begins. What the
     * class does behind it waits for a meeting that begins no sooner than it ends; without any such work it has all the time after the
     * class. The tutor does one thing after the other, and so does a student at home; what is collected or posted is a moment
     * after the last meeting. None of it counts to the finish of the class.
     *
     * @param kind       {@link StepKind#BETWEEN} by the tutor, {@link StepKind#HOMEWORK} by each student, or {@link StepKind#COLLECT}
     * @param length     for all, or of one student at home; zero for what is collected
     * @param perStudent more of the tutor's time for each student
     */
    record Outside(String id, String title, StepKind kind, Duration length, Duration perStudent) implements Step {
        public Outside {
            Guard.named(id, title);
            if (!kind.isOutside()) {
                throw new IllegalArgumentException("\"" + title + "\" is done in the class, not outside the meetings");
            }
            Guard.notNegative(length, title);
            Guard.notNegative(perStudent, title);
        }

        public Outside(String id, String title, StepKind kind, Duration length) {
            this(id, title, kind, length, Duration.ZERO);
        }

        @Override
        public List<ToolUse> uses() {
            return List.of();
        }
    }
}
