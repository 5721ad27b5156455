package benchful.core.lesson.order;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.Step;
import java.util.List;
import java.util.stream.Stream;

/** The answer where no order keeps all greatest gaps with the hours and the tools there are. */
final class NoOrder {

    private NoOrder() {
    }

    static Contradiction of(Model model, boolean proven) {
        List<Step> steps = model.gaps().stream().filter(Gap::hasGreatest).flatMap(gap -> Stream.of(gap.from(), gap.to()))
                .map(index -> model.activity(index).step()).distinct().toList();
        String titles = String.join(", ", steps.stream().map(step -> "\"" + step.title() + "\"").toList());
        String what = proven ? "No order keeps the greatest gaps between " + titles + " with the hours and tools there are."
                : "No order was found that keeps the greatest gaps between " + titles + "; one may exist.";
        return new Contradiction(List.of(new Conflict(Conflict.Kind.NO_ORDER, steps.stream().map(Step::id).toList(), what,
                "Lengthen one of these gaps, bring more of the tools, or move a break.")), proven);
    }
}
