package benchful.core.lesson.order.check;

import static java.util.Objects.requireNonNull;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Conflict.Kind;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds steps that follow each other in a circle, and gaps that cannot all be kept even in an empty room without end. */
public final class OrderCheck {

    private OrderCheck() {
    }

    /** Links with a least gap of zero or more mean "after"; they must not close a circle. */
    static Optional<Conflict> circle(LessonRequest request) {
        List<Step> steps = request.steps();
        Map<String, Integer> place = new HashMap<>();
        steps.forEach(step -> place.put(step.id(), place.size()));
        Circles circles = new Circles(steps.size());
        request.links().stream().filter(link -> !link.least().isNegative())
                .forEach(link -> circles.add(requireNonNull(place.get(link.from())), requireNonNull(place.get(link.to())), 1));
        return conflict(Kind.CYCLE, circles.find().stream().map(steps::get).toList(), "follow each other in a circle.",
                "Take out one of the links between them.");
    }

    /** Every activity has two nodes, its start i and its end i + n. */
    public static Optional<Conflict> gaps(Model model) {
        int n = model.size();
        Circles circles = new Circles(2 * n);
        for (Activity activity : model.activities()) {
            int i = activity.index();
            circles.add(i, i + n, activity.work());
            if (!activity.pausable() || model.hours().closed().isEmpty()) {
                circles.add(i + n, i, -activity.work());
            }
        }
        model.gaps().forEach(gap -> add(gap, n, circles));
        return conflict(Kind.GAPS_IMPOSSIBLE, circles.find().stream().map(node -> model.activity(node % n).step()).toList(),
                "have gaps that cannot all be kept, whatever the order.",
                "Lengthen a greatest gap, shorten a least gap, or shorten a step between them.");
    }

    private static void add(Gap gap, int n, Circles circles) {
        int anchor = gap.fromStart() ? gap.from() : gap.from() + n;
        if (gap.hasLeast()) {
            circles.add(anchor, gap.to(), gap.least());
        }
        if (gap.hasGreatest()) {
            circles.add(gap.to(), anchor, -gap.greatest());
        }
    }

    private static Optional<Conflict> conflict(Kind kind, List<Step> circle, String fault, String mend) {
        List<Step> named = List.copyOf(new LinkedHashSet<>(circle));
        if (named.isEmpty()) {
            return Optional.empty();
        }
        String titles = String.join(", ", named.stream().map(step -> "\"" + step.title() + "\"").toList());
        String what = named.size() == 1 ? titles + " follows itself." : titles + " " + fault;
        return Optional.of(new Conflict(kind, named.stream().map(Step::id).toList(), what, mend));
    }
}
