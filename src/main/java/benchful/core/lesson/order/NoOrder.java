package benchful.core.lesson.order;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import java.util.List;
import java.util.stream.Stream;

/** The answer where no order keeps all greatest gaps with the hours and the tools there are. */
public final class NoOrder {

    private NoOrder() {
    }

    /** @param gaps gaps that cannot be kept together */
    public static Contradiction proven(List<Gap> gaps, Model model) {
        List<Step> steps = steps(gaps, model);
        return of(steps, "No order keeps the gaps between " + titles(steps) + " with the hours and tools there are.", true);
    }

    public static Contradiction notFound(Model model) {
        List<Step> steps = steps(model.gaps().stream().filter(Gap::hasGreatest).toList(), model);
        return of(steps, "No order was found that keeps the greatest gaps between " + titles(steps) + "; one may exist.", false);
    }

    private static List<Step> steps(List<Gap> gaps, Model model) {
        return gaps.stream().flatMap(gap -> Stream.of(gap.from(), gap.to())).sorted()
                .map(index -> model.activity(index).step()).distinct().toList();
    }

    private static String titles(List<Step> steps) {
        return String.join(", ", steps.stream().map(step -> "\"" + step.title() + "\"").toList());
    }

    private static Contradiction of(List<Step> steps, String what, boolean proven) {
        return new Contradiction(List.of(new Conflict(Conflict.Kind.NO_ORDER, steps.stream().map(Step::id).toList(), what,
                "Lengthen one of the greatest gaps, bring more of the tools, or move a break.")), proven);
    }
}
