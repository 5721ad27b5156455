package benchful.core.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plan that a class is run by.
 *
 * @param steps by their planned start
 * @param pauses breaks and the time between meetings, in which nobody works
 * @param students how many are expected
 * @param end the booked end
 */
public record Course(List<Item> steps, List<Pause> pauses, int students, LocalDateTime end) {
    public Course {
        steps = List.copyOf(steps);
        pauses = List.copyOf(pauses);
    }

    /**
     * One step as it was planned.
     *
     * @param group 0 for the whole class, else the group from 1
     * @param handsOn false for a wait, during which other steps go on
     * @param own whether each student does it, so that some finish before others
     * @param length time worked, breaks left out
     * @param notBefore the time that the tutor asked for; null where it begins as soon as it can
     */
    public record Item(String key, String title, int group, boolean handsOn, boolean own, LocalDateTime start, LocalDateTime end, Duration length, @Nullable LocalDateTime notBefore) {
        public Item(String key, String title, int group, boolean handsOn, boolean own, LocalDateTime start, LocalDateTime end, Duration length) {
            this(key, title, group, handsOn, own, start, end, length, null);
        }

        /** Whether they can't go on beside each other: of what is shown to one group and to another, as there is one tutor. */
        boolean sharesPeople(Item other) {
            return group == 0 || other.group == 0 || group == other.group || isShown() && other.isShown();
        }

        private boolean isShown() {
            return handsOn && !own;
        }

        Item moved(Duration by) {
            return new Item(key, title, group, handsOn, own, start.plus(by), end.plus(by), length, notBefore == null ? null : notBefore.plus(by));
        }
    }

    /** @param key by which it can be told of; that of a break tells it from the time between two meetings */
    public record Pause(String key, LocalDateTime start, LocalDateTime end) {
        private static final String BREAK = "break-";

        /** @param number among all pauses of the class, from 1 */
        public static Pause rest(int number, LocalDateTime start, LocalDateTime end) {
            return new Pause(BREAK + number, start, end);
        }

        public Duration length() {
            return Duration.between(start, end);
        }

        boolean isBreak() {
            return key.startsWith(BREAK);
        }

        /** What is left of it once the one before it is over. */
        Pause after(Pause before) {
            LocalDateTime from = start.isBefore(before.end) ? before.end : start;
            return new Pause(key, from, end.isBefore(from) ? from : end);
        }

        Pause moved(Duration by) {
            return new Pause(key, start.plus(by), end.plus(by));
        }
    }

    boolean hasStep(@Nullable String key) {
        return steps.stream().anyMatch(s -> s.key().equals(key));
    }

    /** The same on another day: a class that is run on a day for which nothing is planned begins with its first tap. */
    Course on(LocalDateTime first) {
        if (steps.isEmpty() || steps.stream().anyMatch(s -> s.start().toLocalDate().equals(first.toLocalDate()))) {
            return this;
        }
        Duration by = Duration.between(steps.get(0).start(), first);
        return new Course(steps.stream().map(s -> s.moved(by)).toList(), pauses.stream().map(p -> p.moved(by)).toList(), students, end.plus(by));
    }
}
