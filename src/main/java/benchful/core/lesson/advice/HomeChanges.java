package benchful.core.lesson.advice;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.AtHome;
import benchful.core.lesson.time.MeetingLinks;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What students can do at home: a step for which nobody needs the bench, its tools or much help, and behind which the class makes nothing
 * more, or two such; but not the longest, which is what they came for, and nothing that must be done in time.
 */
public final class HomeChanges {

    /** Who takes more than this home takes the class home. */
    private static final int MOST = 2;
    /** Nor who has more than this left to do. */
    private static final Duration LONGEST = Duration.ofMinutes(30);
    /** Calls per hour of a student who gets on alone. */
    private static final double FEW_CALLS = 2;

    private final LessonRequest request;
    private final StepsById steps;
    private final Predicate<Step> harmless;

    private HomeChanges(LessonRequest request, Predicate<Step> harmless) {
        this.request = request;
        this.steps = request.stepsById();
        this.harmless = harmless;
    }

    /** @param harmless which steps anybody may do without the tutor */
    public static List<Change> of(LessonRequest request, Predicate<Step> harmless) {
        HomeChanges changes = new HomeChanges(request, harmless);
        return changes.made().flatMap(make -> changes.home(make).stream()).distinct().toList();
    }

    private Stream<Step.Make> made() {
        return request.steps().stream().filter(step -> step instanceof Step.Make && !request.isAhead(step)).map(Step.Make.class::cast);
    }

    private Optional<Change> home(Step.Make make) {
        Set<Step.Make> all = new LinkedHashSet<>(List.of(make));
        addMadeBehind(make.id(), all);
        Optional<Step.Make> longest = made().max(Comparator.comparing(AtHome::length));
        boolean isTheClass = all.size() > MOST || longest.filter(all::contains).isPresent() || !all.stream().allMatch(this::isEasy);
        List<Step.Make> inOrder = made().filter(all::contains).toList();
        return isTheClass ? Optional.empty() : Optional.of(Change.TakenHome.of(inOrder)).filter(home -> home.takes().compareTo(LONGEST) <= 0).filter(home -> !isWaitedFor(home.apply(request), inOrder)).map(Change.class::cast);
    }

    private void addMadeBehind(String step, Set<Step.Make> all) {
        for (Link link : request.after(step)) {
            if (steps.has(link.to()) && (!(steps.get(link.to()) instanceof Step.Make make) || all.add(make))) {
                addMadeBehind(link.to(), all);
            }
        }
    }

    private boolean isEasy(Step.Make make) {
        boolean alone = make.uses().isEmpty() && !make.beside() && make.help().callsPerStudentHour() <= FEW_CALLS;
        boolean inTime = request.links().stream().anyMatch(link -> link.greatest().isPresent() && (link.from().equals(make.id()) || link.to().equals(make.id())));
        return alone && !inTime && !followsWhatAges(make) && harmless.test(make);
    }

    private boolean followsWhatAges(Step.Make make) {
        return request.links().stream().filter(link -> link.to().equals(make.id()) && steps.has(link.from())).map(link -> steps.get(link.from()))
                .anyMatch(before -> before instanceof Step.Wait wait && wait.greatest().isPresent());
    }

    /** By the class, or by equipment that stands in the room. */
    private boolean isWaitedFor(LessonRequest changed, List<Step.Make> home) {
        MeetingLinks links = new MeetingLinks(changed);
        return home.stream().anyMatch(make -> links.leadsToMeeting(make.id()) || isLaidIn(changed, make.id(), new ArrayList<>()));
    }

    private boolean isLaidIn(LessonRequest changed, String step, List<String> seen) {
        return changed.after(step).stream().map(Link::to).filter(to -> !seen.contains(to) && seen.add(to))
                .anyMatch(to -> !changed.stepsById().get(to).uses().isEmpty() || isLaidIn(changed, to, seen));
    }
}
