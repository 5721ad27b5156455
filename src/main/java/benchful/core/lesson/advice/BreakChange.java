package benchful.core.lesson.advice;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.MinuteWords;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A break at a fixed time of day, taken otherwise in each meeting that has it. */
public sealed interface BreakChange extends Change {

    /** When it begins now. */
    LocalTime at();

    /** The break as it would be. */
    Break changed(Break pause);

    @Override
    default LessonRequest apply(LessonRequest request) {
        UnaryOperator<Break> change = pause -> pause.start().toLocalTime().equals(at()) ? changed(pause) : pause;
        return request.toBuilder().breaks(request.breaks().stream().map(change).sorted(Comparator.comparing(Break::start)).toList()).build();
    }

    @Override
    default Trouble trouble() {
        return Trouble.TEACH;
    }

    /** Take it at another time of day. */
    record Moved(LocalTime at, LocalTime to) implements BreakChange {
        @Override
        public Break changed(Break pause) {
            Duration by = Duration.between(at, to);
            return new Break(pause.title(), pause.start().plus(by), pause.end().plus(by));
        }

        @Override
        public String title() {
            return "Take the break at " + to + " instead of " + at;
        }

        @Override
        public Object kind() {
            return Map.entry(Moved.class, at);
        }

        @Override
        public String loses() {
            return to.isAfter(at) ? "They rest " + MinuteWords.minutes(Duration.between(at, to)) + " later" : "";
        }
    }

    /** Make it so long. */
    record Shortened(LocalTime at, Duration from, Duration to) implements BreakChange {
        @Override
        public Break changed(Break pause) {
            return new Break(pause.title(), pause.start(), pause.start().plus(to));
        }

        @Override
        public String title() {
            return "Shorten the break at " + at + " to " + MinuteWords.minutes(to);
        }

        @Override
        public Object kind() {
            return Map.entry(Shortened.class, at);
        }

        @Override
        public int extent() {
            return (int) from.minus(to).toMinutes();
        }

        @Override
        public String loses() {
            return "They rest " + MinuteWords.minutes(from.minus(to)) + " less";
        }
    }
}
