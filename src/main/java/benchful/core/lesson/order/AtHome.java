package benchful.core.lesson.order;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Make steps that students take home. Each becomes homework, as long as it usually takes who has most to do; a wait without equipment
 * that follows nothing else goes home with it. What is shown or done all together behind them goes on without them: it follows what they
 * followed, and whatever is made behind it follows them.
 */
public final class AtHome {

    private final LessonRequest request;
    private final StepsById steps;
    private final Set<String> home;

    private AtHome(LessonRequest request, Set<String> made) {
        this.request = request;
        this.steps = request.stepsById();
        this.home = withWaits(made);
    }

    /** The same class with these steps done at home; ids of other steps, and of what is done ahead, are passed over. */
    public static LessonRequest of(LessonRequest request, Collection<String> ids) {
        Set<String> made = request.steps().stream().filter(step -> ids.contains(step.id()) && step instanceof Step.Make && !request.isAhead(step)).map(Step::id)
                .collect(Collectors.toSet());
        return made.isEmpty() ? request : new AtHome(request, made).without(made);
    }

    private LessonRequest without(Set<String> made) {
        Map<String, LocalDateTime> times = new HashMap<>(request.notBefore());
        times.keySet().removeAll(made);
        return request.toBuilder().steps(request.steps().stream().map(step -> made.contains(step.id()) ? homework((Step.Make) step) : step).toList())
                .links(links()).notBefore(times).build();
    }

    private static Step homework(Step.Make make) {
        return new Step.Outside(make.id(), make.title(), StepKind.HOMEWORK, length(make));
    }

    /** What it usually takes who has most to do. */
    public static Duration length(Step.Make make) {
        double most = make.time().work().stream().mapToDouble(StudentTime.Work::scale).max().orElse(1);
        return Duration.ofSeconds(Math.round(make.time().usual().toSeconds() * most));
    }

    private Set<String> withWaits(Set<String> made) {
        Set<String> all = new HashSet<>(made);
        boolean more = true;
        while (more) {
            more = all.addAll(request.steps().stream().filter(step -> step.kind().isUnattended() && step.uses().isEmpty() && followsOnly(step, all)).map(Step::id).toList());
        }
        return all;
    }

    private boolean followsOnly(Step step, Set<String> all) {
        List<Link> before = before(step.id());
        return !before.isEmpty() && before.stream().allMatch(link -> all.contains(link.from()));
    }

    private List<Link> links() {
        Set<Link> links = new LinkedHashSet<>();
        for (Link link : request.links()) {
            if (home.contains(link.from()) && isGathering(link.to())) {
                before(link.from(), new HashSet<>()).forEach(sooner -> links.add(new Link(sooner, link.to())));
                behind(link.to(), new HashSet<>()).forEach(later -> links.add(new Link(link.from(), later)));
            } else {
                links.add(link);
            }
        }
        return List.copyOf(links);
    }

    private boolean isGathering(String step) {
        return steps.has(step) && steps.get(step).kind().isGathering();
    }

    private List<Link> before(String step) {
        return request.links().stream().filter(link -> link.to().equals(step)).toList();
    }

    /** What is done in the class, next before a step. */
    private Stream<String> before(String step, Set<String> seen) {
        return before(step).stream().map(Link::from).filter(seen::add).flatMap(sooner -> home.contains(sooner) ? before(sooner, seen) : Stream.of(sooner));
    }

    /** What follows a step without being shown or done all together. */
    private Stream<String> behind(String step, Set<String> seen) {
        return request.after(step).stream().map(Link::to).filter(seen::add).flatMap(later -> isGathering(later) ? behind(later, seen) : Stream.of(later));
    }
}
