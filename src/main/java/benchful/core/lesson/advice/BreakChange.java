package benchful.core.lesson.advice;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.MinuteWords;
import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A break at a fixed time of day, taken otherwise in each meeting that has it. */
public sealed interface BreakChange extends Change {

    /** When it begins now. */
    LocalTime at();

    /** When it would begin, each part of it. */
    List<LocalTime> begins();

    /** What there would be instead of the break. */
    List<Break> changed(Break pause);

    @Override
    default LessonRequest apply(LessonRequest request) {
        Stream<Break> changed = request.breaks().stream().flatMap(pause -> pause.start().toLocalTime().equals(at()) ? changed(pause).stream() : Stream.of(pause));
        return request.toBuilder().breaks(changed.sorted(Comparator.comparing(Break::start)).toList()).build();
    }

    @Override
    default Trouble trouble() {
        return Trouble.TEACH;
    }

    /** Take it at another time of day. */
    record Moved(LocalTime at, LocalTime to) implements BreakChange {
        @Override
        public List<LocalTime> begins() {
            return List.of(to);
        }

        @Override
        public List<Break> changed(Break pause) {
            Duration by = Duration.between(at, to);
            return List.of(new Break(pause.title(), pause.start().plus(by), pause.end().plus(by)));
        }

        @Override
        public Sentence title() {
            return Sentence.of("Take the break at %s instead of %s", to, at);
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
        public List<LocalTime> begins() {
            return List.of(at);
        }

        @Override
        public List<Break> changed(Break pause) {
            return List.of(new Break(pause.title(), pause.start(), pause.start().plus(to)));
        }

        @Override
        public Sentence title() {
            return Sentence.of("Shorten the break at %s to %s", at, MinuteWords.minutes(to));
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

    /**
     * Take it in two parts, as long together as it is.
     *
     * @param to     when the first part begins
     * @param first  how long it lasts
     * @param later  when the second part begins, after the first is over
     * @param second how long that lasts
     */
    record Split(LocalTime at, LocalTime to, Duration first, LocalTime later, Duration second) implements BreakChange {
        @Override
        public List<LocalTime> begins() {
            return List.of(to, later);
        }

        @Override
        public List<Break> changed(Break pause) {
            LocalDateTime start = pause.start().plus(Duration.between(at, to));
            LocalDateTime again = pause.start().plus(Duration.between(at, later));
            return List.of(new Break(pause.title(), start, start.plus(first)), new Break(pause.title(), again, again.plus(second)));
        }

        @Override
        public Sentence title() {
            return Sentence.of("Split the break at %s: %s at %s and %s at %s", at, MinuteWords.minutes(first), to, MinuteWords.minutes(second), later);
        }

        @Override
        public Object kind() {
            return Map.entry(Split.class, at);
        }

        /** What only moves it asks less. */
        @Override
        public int extent() {
            return 1;
        }

        @Override
        public String loses() {
            return "They have no rest longer than " + MinuteWords.minutes(first);
        }
    }
}
