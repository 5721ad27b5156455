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

    private static final int NAMED = 5;

    private NoOrder() {
    }

    /**
     * @param gaps  gaps that cannot be kept together
     * @param tools tools of which more would allow an order
     */
    public static Contradiction proven(List<Gap> gaps, List<String> tools, Model model) {
        List<Step> steps = steps(gaps, model);
        return of(steps, "No order keeps the greatest gaps" + between(steps) + asked(model) + " with the hours and tools there are.", mend(tools), true);
    }

    public static Contradiction notFound(Model model) {
        List<Step> steps = steps(model.gaps().stream().filter(Gap::hasGreatest).toList(), model);
        return of(steps, "No order was found that keeps the greatest gaps" + between(steps) + asked(model) + "; one may exist.", mend(List.of()), false);
    }

    private static List<Step> steps(List<Gap> gaps, Model model) {
        return gaps.stream().flatMap(gap -> Stream.of(gap.from(), gap.to())).sorted()
                .map(index -> model.activity(index).step()).distinct().toList();
    }

    /** The first few by name; where none is at fault more than the others, nobody. */
    private static String between(List<Step> steps) {
        String first = String.join(", ", steps.stream().limit(NAMED).map(step -> "\"" + step.title() + "\"").toList());
        int more = steps.size() - NAMED;
        return steps.isEmpty() ? "" : " between " + first + (more > 0 ? " and " + more + " more step" + (more == 1 ? "" : "s") : "");
    }

    private static String asked(Model model) {
        return model.hasTimesAskedFor() ? " and the times you asked for" : "";
    }

    private static String mend(List<String> tools) {
        return tools.isEmpty() ? "Lengthen one of the greatest gaps, bring more of the tools, or move a break."
                : "With more of this it can be done: " + String.join(", or ", tools) + ". Or lengthen one of the greatest gaps.";
    }

    private static Contradiction of(List<Step> steps, String what, String mend, boolean proven) {
        return new Contradiction(List.of(new Conflict(Conflict.Kind.NO_ORDER, steps.stream().map(Step::id).toList(), what, mend)), proven);
    }
}
