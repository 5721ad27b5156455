package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What falls into one meeting.
 *
 * @param number   from 1
 * @param start    booked start
 * @param end      booked end
 * @param finish   when the last work of the class in it ends; its start if there is none
 * @param steps    ids of the steps that begin or go on in it, by start
 */
public record MeetingPlan(int number, LocalDateTime start, LocalDateTime end, LocalDateTime finish, List<String> steps) {
    public MeetingPlan {
        steps = List.copyOf(steps);
    }

    /** The blocks of a class by its meetings; what runs past a meeting's booked end is still its own. */
    public static List<MeetingPlan> all(List<Meeting> meetings, List<Block> blocks) {
        return IntStream.range(0, meetings.size()).mapToObj(i -> {
            LocalDateTime until = i + 1 < meetings.size() ? meetings.get(i + 1).start() : LocalDateTime.MAX;
            return of(i + 1, meetings.get(i), until, blocks);
        }).toList();
    }

    private static MeetingPlan of(int number, Meeting meeting, LocalDateTime until, List<Block> blocks) {
        List<Block> inside = blocks.stream().filter(block -> block.lane() != Lane.OUTSIDE).filter(block -> block.segments().stream()
                .anyMatch(part -> !part.start().isBefore(meeting.start()) && part.start().isBefore(until))).toList();
        LocalDateTime finish = inside.stream().filter(block -> block.lane() == Lane.CLASS)
                .flatMap(block -> block.segments().stream()).filter(part -> part.start().isBefore(until)).map(Segment::end)
                .max(Comparator.naturalOrder()).orElse(meeting.start());
        return new MeetingPlan(number, meeting.start(), meeting.end(), finish, inside.stream().map(Block::step).distinct().toList());
    }

    /** Booked end less finish: negative if it runs over. */
    public Duration margin() {
        return Duration.between(finish, end);
    }
}
