package benchful.plans;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.StepKind;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What goes on while no meeting is held, by its time: the tutor's work, homework, waits that begin by themselves, and what is collected
 * or posted; with the time by which it must be done so that the class goes on as planned.
 */
public final class BetweenMeetings {
    private final ProjectSpec project;
    private final LessonPlan lesson;
    private final Map<Map.Entry<String, LocalDateTime>, Optional<LocalDateTime>> latestEnds = new HashMap<>();

    private BetweenMeetings(ProjectSpec project, LessonPlan lesson) {
        this.project = project;
        this.lesson = lesson;
    }

    /**
     * One thing that goes on.
     *
     * @param number of the step, as everywhere
     * @param from   when it can begin
     * @param end    when it is over if it does
     * @param by     when it must be over at the latest; null where nothing in a meeting waits for it
     * @param length of the tutor's work for all, of one student's homework, or of the wait
     * @param after  the number of the meeting that it comes after, from 1
     */
    @TemplateData
    public record Item(int number, String step, String title, StepKind kind, LocalDateTime from, LocalDateTime end, LocalDateTime by, Duration length, int after) {
        public String who() {
            return switch (kind) {
                case BETWEEN -> "you";
                case HOMEWORK -> "each student";
                case COLLECT -> "students, or the post";
                case WAIT -> "nobody";
                case SHOW, MAKE, TOGETHER, AHEAD -> throw new IllegalStateException(title + " is no work outside the meetings");
            };
        }

        /** "50 min"; empty of what is collected or posted. */
        public String takes() {
            return kind == StepKind.COLLECT ? "" : Formats.words(length);
        }

        /** "by Sat 22 Mar 2025, 10:00"; empty where nothing waits for it. */
        public String latest() {
            return by == null ? "" : "by " + Formats.words(by);
        }
    }

    /** @param lesson null where there is no plan: then nothing is known */
    public static List<Item> of(ProjectSpec project, LessonPlan lesson) {
        return lesson == null ? List.of() : new BetweenMeetings(project, lesson).items();
    }

    private List<Item> items() {
        Map<String, Integer> numbers = StepNumbers.of(lesson);
        return lesson.blocks().stream().filter(this::isOutside).sorted(Comparator.comparing(Block::start).thenComparing(Block::end))
                .map(block -> item(block, numbers.get(block.step()))).toList();
    }

    private boolean isOutside(Block block) {
        boolean wait = block.lane() == Lane.WAIT || block.lane() == Lane.EQUIPMENT;
        return block.lane() == Lane.OUTSIDE || wait && lesson.meetings().stream().noneMatch(meeting -> holds(meeting, block.start()));
    }

    /** A class that runs over is still in its meeting. */
    private static boolean holds(MeetingPlan meeting, LocalDateTime time) {
        LocalDateTime end = meeting.finish().isAfter(meeting.end()) ? meeting.finish() : meeting.end();
        return !time.isBefore(meeting.start()) && !time.isAfter(end);
    }

    private Item item(Block block, int number) {
        int after = (int) lesson.meetings().stream().filter(meeting -> !meeting.end().isAfter(block.start())).count();
        LocalDateTime by = block.lane() == Lane.OUTSIDE ? latestEnd(block.step(), block.start()).map(this::outside).map(end -> end.isBefore(block.end()) ? block.end() : end).orElse(null) : null;
        return new Item(number, block.step(), block.title(), block.kind(), block.start(), block.end(), by, block.length(), Math.max(1, after));
    }

    /**
     * When a step must be over so that what follows it, over waits and work outside the meetings, begins as planned.
     *
     * @param begun when it can begin: what the class does before that did not wait for it, and what follows that may
     */
    private Optional<LocalDateTime> latestEnd(String step, LocalDateTime begun) {
        Map.Entry<String, LocalDateTime> key = Map.entry(step, begun);
        Optional<LocalDateTime> known = latestEnds.get(key);
        if (known == null) {
            known = endOf(step, begun);
            latestEnds.put(key, known);
        }
        return known;
    }

    private Optional<LocalDateTime> endOf(String step, LocalDateTime begun) {
        return IntStream.range(0, project.steps().size()).boxed().flatMap(next -> project.predecessors(next).stream()
                .filter(after -> after.step().equals(step) && after.follows()).flatMap(after -> latestStart(project.steps().get(next), begun).stream()
                        .map(start -> after.least() == null ? start : start.minus(after.least())))).min(Comparator.naturalOrder());
    }

    private Optional<LocalDateTime> latestStart(Step next, LocalDateTime begun) {
        List<Block> blocks = lesson.blocksOf(next.id());
        if (blocks.stream().anyMatch(block -> block.lane() == Lane.CLASS)) {
            LocalDateTime first = blocks.stream().map(Block::start).min(Comparator.naturalOrder()).orElseThrow();
            return first.isBefore(begun) ? latestEnd(next.id(), begun) : Optional.of(first);
        }
        return blocks.stream().map(Block::length).max(Comparator.naturalOrder()).flatMap(length -> latestEnd(next.id(), begun).map(end -> end.minus(length)));
    }

    /** Nobody works outside the meetings while one is held. */
    private LocalDateTime outside(LocalDateTime end) {
        return lesson.meetings().stream().filter(meeting -> end.isAfter(meeting.start()) && !end.isAfter(meeting.end())).map(MeetingPlan::start).findFirst().orElse(end);
    }
}
