package benchful.documents.handout;

import benchful.documents.paper.Version;
import java.util.ArrayList;
import java.util.List;

/**
 * Steps that stand together on a handout: one alone as a rule, or two that follow each other and are done by the same picture, which then stands
 * beside both.
 *
 * @param steps one, or two of which the second meets no new hazard, as that is told across the page
 */
public record StepBlock(List<HandoutContent.Step> steps) {
    public StepBlock {
        steps = List.copyOf(steps);
    }

    /** In their order. In large print a picture stands below the words, so each step has its own. */
    static List<StepBlock> of(List<HandoutContent.Step> steps, Version version) {
        List<StepBlock> blocks = new ArrayList<>();
        for (HandoutContent.Step step : steps) {
            StepBlock last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
            if (last != null && version != Version.LARGE && last.takes(step)) {
                blocks.set(blocks.size() - 1, new StepBlock(List.of(last.first(), step)));
            } else {
                blocks.add(new StepBlock(List.of(step)));
            }
        }
        return blocks;
    }

    private boolean takes(HandoutContent.Step next) {
        return !isShared() && !next.beside().isEmpty() && next.beside().equals(first().beside()) && first().cautions().isEmpty() && next.cautions().isEmpty()
                && first().link().isEmpty() && next.link().isEmpty();
    }

    public HandoutContent.Step first() {
        return steps.get(0);
    }

    /** Whether two share a picture. */
    public boolean isShared() {
        return steps.size() > 1;
    }

    /** "For steps 18 and 19". */
    public String caption() {
        return "For steps %d and %d".formatted(first().number(), steps.get(steps.size() - 1).number());
    }
}
