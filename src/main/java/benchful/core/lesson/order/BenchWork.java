package benchful.core.lesson.order;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.Segment;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** How long students of a plan work at the bench without a rest; each group for itself. */
public final class BenchWork {

    private final Duration rest;
    private final List<Stretch> stretches = new ArrayList<>();

    private BenchWork(Duration rest) {
        this.rest = rest;
    }

    /**
     * Work with no rest in it.
     *
     * @param parts the times worked, in order
     */
    public record Stretch(List<Segment> parts) {
        public Stretch {
            parts = List.copyOf(parts);
        }

        public LocalDateTime start() {
            return parts.get(0).start();
        }

        public LocalDateTime end() {
            return parts.get(parts.size() - 1).end();
        }

        public Duration worked() {
            return parts.stream().map(Segment::length).reduce(Duration.ZERO, Duration::plus);
        }

        /** When so much of it is done; its end where there is less. */
        LocalDateTime done(Duration work) {
            Duration left = work;
            for (Segment part : parts) {
                if (part.length().compareTo(left) >= 0) {
                    return part.start().plus(left);
                }
                left = left.minus(part.length());
            }
            return end();
        }
    }

    /** The stretches that are longer than the rule allows, in the order in which their rests are due. */
    public static List<Stretch> tooLong(LessonPlan plan, Rest rule) {
        return of(plan, rule.lasts()).stream().filter(stretch -> rule.isFor(stretch.start())).filter(stretch -> stretch.worked().compareTo(rule.after()) > 0)
                .sorted(Comparator.comparing((Stretch stretch) -> stretch.done(rule.after()))).toList();
    }

    /** @param rest what is no work for so long is a rest */
    public static List<Stretch> of(LessonPlan plan, Duration rest) {
        BenchWork work = new BenchWork(rest);
        List<Block> own = plan.blocks().stream().filter(block -> block.kind().isOwnWork()).toList();
        Stream<Integer> groups = own.stream().anyMatch(block -> block.group() > 0) ? own.stream().map(Block::group).filter(group -> group > 0).distinct().sorted() : Stream.of(0);
        groups.forEach(group -> work.add(own.stream().filter(block -> block.group() == 0 || block.group() == group).flatMap(block -> block.segments().stream())
                .sorted(Comparator.comparing(Segment::start)).toList()));
        return List.copyOf(work.stretches);
    }

    /** Of one group, in order. */
    private void add(List<Segment> worked) {
        List<Segment> parts = new ArrayList<>();
        for (Segment next : worked) {
            Segment last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
            if (last != null && !next.start().isAfter(last.end())) {
                parts.set(parts.size() - 1, new Segment(last.start(), next.end().isAfter(last.end()) ? next.end() : last.end()));
            } else {
                if (last != null && Duration.between(last.end(), next.start()).compareTo(rest) >= 0) {
                    stretches.add(new Stretch(parts));
                    parts.clear();
                }
                parts.add(next);
            }
        }
        if (!parts.isEmpty()) {
            stretches.add(new Stretch(parts));
        }
    }
}
