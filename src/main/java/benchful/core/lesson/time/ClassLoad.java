package benchful.core.lesson.time;

import benchful.core.lesson.Block;
import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Segment;
import benchful.core.lesson.TutorLoad;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** How busy the blocks of a plan keep the tutor, and how long they leave the class without work. */
public final class ClassLoad {

    private final LessonRequest request;
    private final List<Block> work;

    public ClassLoad(LessonRequest request, List<Block> blocks) {
        this.request = request;
        this.work = blocks.stream().filter(block -> block.lane() == Lane.CLASS).toList();
    }

    public TutorLoad tutor() {
        List<TutorLoad.Span> spans = new ArrayList<>();
        double weighted = 0;
        long worked = 0;
        List<LocalDateTime> marks = work.stream().flatMap(block -> block.segments().stream())
                .flatMap(part -> Stream.of(part.start(), part.end())).distinct().sorted().toList();
        for (int i = 1; i < marks.size(); i++) {
            Segment stretch = new Segment(marks.get(i - 1), marks.get(i));
            List<Block> now = during(stretch);
            double share = Math.min(1, now.stream().mapToDouble(Block::tutorShare).sum());
            weighted += share * stretch.length().toSeconds();
            worked += now.isEmpty() ? 0 : stretch.length().toSeconds();
            if (share > 0) {
                spans.add(span(stretch, now, share));
            }
        }
        double peak = spans.stream().mapToDouble(TutorLoad.Span::share).max().orElse(0);
        return new TutorLoad(spans, peak, worked == 0 ? 0 : weighted / worked);
    }

    private List<Block> during(Segment stretch) {
        return work.stream().filter(block -> block.segments().stream()
                .anyMatch(part -> part.start().isBefore(stretch.end()) && part.end().isAfter(stretch.start()))).toList();
    }

    private TutorLoad.Span span(Segment stretch, List<Block> now, double share) {
        String titles = String.join(", ", now.stream().map(block -> block.title() + (block.group() == 0 ? "" : " (group " + block.group() + ")")).toList());
        return new TutorLoad.Span(stretch.start(), stretch.end(), titles, share, helping(now));
    }

    /** Helpers share the calls with the tutor, who alone shows and leads. */
    private double helping(List<Block> now) {
        return request.helpers() == 0 ? 0
                : Math.min(1, now.stream().filter(block -> block.kind().isOwnWork()).mapToDouble(Block::tutorShare).sum());
    }

    /** The time up to its last step in which the class works at nothing, breaks left out; averaged over the groups. */
    public Duration idle() {
        LocalDateTime until = work.stream().map(Block::end).max(Comparator.naturalOrder()).orElse(request.start());
        Duration open = Duration.between(request.start(), until);
        for (ClosedTime part : ClosedTime.of(request)) {
            LocalDateTime from = request.start().plusSeconds(part.from());
            LocalDateTime to = request.start().plusSeconds(part.to());
            open = from.isBefore(until) ? open.minus(Duration.between(from, to.isBefore(until) ? to : until)) : open;
        }
        Duration idle = Duration.ZERO;
        for (int group = 1; group <= request.groups(); group++) {
            idle = idle.plus(open.minus(busy(group)));
        }
        return idle.isNegative() ? Duration.ZERO : idle.dividedBy(request.groups());
    }

    /** How long a group works at something, whether at one step or at several. */
    private Duration busy(int group) {
        Duration busy = Duration.ZERO;
        LocalDateTime done = LocalDateTime.MIN;
        for (Segment part : segments(group)) {
            LocalDateTime from = part.start().isAfter(done) ? part.start() : done;
            if (part.end().isAfter(from)) {
                busy = busy.plus(Duration.between(from, part.end()));
                done = part.end();
            }
        }
        return busy;
    }

    private List<Segment> segments(int group) {
        return work.stream().filter(block -> block.group() == 0 || block.group() == group).flatMap(block -> block.segments().stream())
                .sorted(Comparator.comparing(Segment::start)).toList();
    }
}
