package benchful.plans.pictures;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.risk.Risk;
import benchful.plans.StepNumbers;
import benchful.plans.Timing;
import benchful.web.Formats;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The timed plan drawn to scale: for each meeting a lane for the class or for each group, one for the likely and late ends, one
 * for how busy the tutor is and one for the helpers, one for what dries or cures, and one for equipment in use. It reads in black and white: kinds differ by the band on top of a block, and steps
 * that decide the finish by a thick frame.
 *
 * @param breaks breaks in which nobody works; the plan itself does not carry them
 * @param risks  likely and late ends of the blocks; empty where no classes were simulated
 * @param width  of the drawing [px]
 * @param text   size of its letters [px]; everything else follows from it
 * @param id     begins the ids within the drawing, so that two may stand on one page
 */
public record PlanPicture(LessonPlan plan, List<Break> breaks, List<Risk.BlockRisk> risks, int width, int text, String id) {
    public PlanPicture {
        breaks = List.copyOf(breaks);
        risks = List.copyOf(risks);
        if (width < 200 || text < 6) {
            throw new IllegalArgumentException("A plan is drawn at least 200 px wide with letters of 6 px, not %d and %d".formatted(width, text));
        }
    }

    /** 960 px wide, as on a page. */
    public static PlanPicture of(Timing plan) {
        return new PlanPicture(plan.lesson(), plan.breaks(), plan.risk() == null ? List.of() : plan.risk().blocks(), 960, 13, "plan");
    }

    public PlanPicture sized(int newWidth, int newText) {
        return new PlanPicture(plan, breaks, risks, newWidth, newText, id);
    }

    public PlanPicture named(String newId) {
        return new PlanPicture(plan, breaks, risks, width, text, newId);
    }

    public String svg() {
        return svg(plan.meetings());
    }

    /** @param meetings those of the plan that are drawn, as where a page holds only one */
    public String svg(List<MeetingPlan> meetings) {
        Svg svg = new Svg();
        Map<String, Integer> numbers = StepNumbers.of(plan);
        double y = 0;
        for (MeetingPlan meeting : meetings) {
            y = new PlanPanel(this, meeting, numbers, svg).draw(y) + text;
        }
        y = legend(svg, y);
        return svg.document(width, y, "px", id, title(), description(numbers));
    }

    private double legend(Svg svg, double y) {
        double x = 0;
        for (Legend entry : legendEntries()) {
            double needed = 3 * text + Svg.widthOf(entry.words(), text) + 1.5 * text;
            if (x > 0 && x + needed > width) {
                x = 0;
                y += 1.9 * text;
            }
            PlanBox.draw(svg, entry.kind(), entry.critical(), x + 1, y + 1, 2.2 * text, 1.4 * text, text);
            svg.text(x + 2.9 * text, y + 1.2 * text, text, entry.words(), "");
            x += needed;
        }
        return risks.isEmpty() ? y + 2 * text : lateLegend(svg, x, y);
    }

    private double lateLegend(Svg svg, double x, double y) {
        String words = "step's likely end to its late end, which nine classes in ten keep to";
        boolean wraps = x > 0 && x + 3 * text + Svg.widthOf(words, text) > width;
        double left = wraps ? 0 : x;
        double top = wraps ? y + 1.9 * text : y;
        LateLane.bar(svg, left + 1, top + 0.1 * text, 2.2 * text, text);
        svg.text(left + 2.9 * text, top + 1.2 * text, text, words, "");
        return top + 2 * text;
    }

    private record Legend(StepKind kind, boolean critical, String words) {}

    private List<Legend> legendEntries() {
        Stream<Legend> kinds = Arrays.stream(StepKind.values()).filter(kind -> !kind.isBeforeClass() && !kind.isOutside()).map(kind -> new Legend(kind, false, words(kind)));
        return Stream.concat(kinds, Stream.of(new Legend(StepKind.MAKE, true, "thick frame: any delay here delays the end"))).toList();
    }

    private static String words(StepKind kind) {
        return switch (kind) {
            case SHOW -> "watch";
            case MAKE -> "make";
            case WAIT -> "wait";
            case TOGETHER -> "all together";
            case AHEAD -> "before the class";
            case BETWEEN, HOMEWORK, COLLECT -> "outside the meetings";
        };
    }

    private String title() {
        return "Timed plan, %s to %s".formatted(Formats.words(plan.start()), until());
    }

    private String until() {
        boolean sameDay = plan.start().toLocalDate().equals(plan.finish().toLocalDate());
        return sameDay ? Formats.clock(plan.finish()) : Formats.words(plan.finish());
    }

    private String description(Map<String, Integer> numbers) {
        return plan.blocks().stream().filter(block -> block.lane() != Lane.OUTSIDE)
                .sorted((a, b) -> numbers.get(a.step()).compareTo(numbers.get(b.step())))
                .map(block -> "%d %s, %s to %s".formatted(numbers.get(block.step()), block.title(), Formats.clock(block.start()), ends(block)))
                .collect(Collectors.joining("; ", "", "."));
    }

    private static String ends(Block block) {
        boolean sameDay = block.start().toLocalDate().equals(block.end().toLocalDate());
        return sameDay ? Formats.clock(block.end()) : Formats.words(block.end());
    }
}
