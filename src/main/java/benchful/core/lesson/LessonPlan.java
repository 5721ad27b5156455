package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;

/**
 * The timed plan of a class. It may end after the booked hours: see {@link #over()}.
 *
 * @param blocks      the steps on the clock, by start; steps done ahead are in {@code preparation} instead
 * @param start       start of the first meeting
 * @param finish      when the last step of the class ends (not what ends at home or goes on when the class has made all)
 * @param bookedEnd   end of the last meeting
 * @param meetings    what falls into each meeting
 * @param tutor       how busy the tutor is kept
 * @param idle        how long the class has nothing to do before its last step ends, breaks not counted
 * @param proof       whether a shorter plan can exist
 * @param preparation what the tutor does before the class
 */
public record LessonPlan(List<Block> blocks, LocalDateTime start, LocalDateTime finish, LocalDateTime bookedEnd,
        List<MeetingPlan> meetings, TutorLoad tutor, Duration idle, Proof proof, Preparation preparation) {

    public LessonPlan {
        blocks = List.copyOf(blocks);
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(finish, "finish");
        Objects.requireNonNull(bookedEnd, "bookedEnd");
        meetings = List.copyOf(meetings);
        Objects.requireNonNull(tutor, "tutor");
        Guard.notNegative(idle, "idle time");
        Objects.requireNonNull(proof, "proof");
        Objects.requireNonNull(preparation, "preparation");
    }

    public boolean fits() {
        return !finish.isAfter(bookedEnd);
    }

    /** How long the plan runs past the booked end; zero if it fits. */
    public Duration over() {
        return fits() ? Duration.ZERO : Duration.between(bookedEnd, finish);
    }

    /** How long before the booked end the plan finishes; zero if it runs over. */
    public Duration spare() {
        return fits() ? Duration.between(finish, bookedEnd) : Duration.ZERO;
    }

    /** From the start of the first meeting to the finish, breaks and days between included. */
    public Duration length() {
        return Duration.between(start, finish);
    }

    /** The blocks that decide the finish, by start. */
    public List<Block> criticalChain() {
        return blocks.stream().filter(Block::critical).toList();
    }

    /** All blocks of a step: one, or one for each group. */
    public List<Block> blocksOf(String step) {
        return blocks.stream().filter(block -> block.step().equals(step)).toList();
    }
}
