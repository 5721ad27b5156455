package benchful.core.lesson.order;

import benchful.core.lesson.TutorLoad;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How busy a plan keeps the tutor, and how long it leaves the class without work. */
public final class Load {

    private record Stretch(Activity activity, long from, long to) {
    }

    private final Model model;
    private final List<Stretch> stretches;

    public Load(Model model, long[] starts) {
        this.model = model;
        this.stretches = model.activities().stream().filter(Activity::hands).flatMap(activity ->
                model.hours().segments(activity, starts[activity.index()]).stream()
                        .map(part -> new Stretch(activity, part[0], part[1]))).toList();
    }

    TutorLoad tutor() {
        List<TutorLoad.Span> spans = new ArrayList<>();
        double weighted = 0;
        long worked = 0;
        long[] marks = stretches.stream().flatMap(part -> Stream.of(part.from(), part.to())).mapToLong(Long::longValue)
                .distinct().sorted().toArray();
        for (int i = 1; i < marks.length; i++) {
            List<Activity> now = during(marks[i - 1], marks[i]);
            double share = Math.min(1, now.stream().mapToDouble(Activity::tutorShare).sum());
            weighted += share * (marks[i] - marks[i - 1]);
            worked += now.isEmpty() ? 0 : marks[i] - marks[i - 1];
            if (share > 0) {
                spans.add(span(marks[i - 1], marks[i], now, share));
            }
        }
        double peak = spans.stream().mapToDouble(TutorLoad.Span::share).max().orElse(0);
        return new TutorLoad(spans, peak, worked == 0 ? 0 : weighted / worked);
    }

    private List<Activity> during(long from, long to) {
        return stretches.stream().filter(part -> part.from() < to && part.to() > from).map(Stretch::activity).toList();
    }

    private TutorLoad.Span span(long from, long to, List<Activity> now, double share) {
        String titles = String.join(", ", now.stream().map(Activity::title).toList());
        return new TutorLoad.Span(model.hours().toTime(from), model.hours().toTime(to), titles, share, helping(now));
    }

    /** Helpers share the calls with the tutor, who alone shows and leads. */
    private double helping(List<Activity> now) {
        return model.request().helpers() == 0 ? 0
                : Math.min(1, now.stream().filter(a -> a.step().kind().isOwnWork()).mapToDouble(Activity::tutorShare).sum());
    }

    /** Averaged over the groups. */
    public Duration idle() {
        long until = stretches.stream().mapToLong(Stretch::to).max().orElse(0);
        long busy = 0;
        for (int seat = model.firstSeat(); seat < model.capacity().length; seat++) {
            int resource = seat;
            busy += stretches.stream().filter(part -> part.activity().uses()[resource] > 0)
                    .mapToLong(part -> part.to() - part.from()).sum();
        }
        return model.hours().toLength(Math.max(0, model.hours().open(0, until) - busy / model.request().groups()));
    }
}
