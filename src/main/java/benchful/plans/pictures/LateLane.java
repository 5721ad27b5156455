package benchful.plans.pictures;

import benchful.core.lesson.risk.Risk.BlockRisk;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** For each step of the class a bar from its likely end to its late end, numbered, in as few rows as hold them side by side. */
final class LateLane {
    private static final double ROW = 1.3;

    private final PlanScale scale;
    private final Map<String, Integer> numbers;
    private final List<List<Bar>> rows = new ArrayList<>();

    /** @param blocks those that are to be shown */
    LateLane(PlanScale scale, Map<String, Integer> numbers, List<BlockRisk> blocks) {
        this.scale = scale;
        this.numbers = numbers;
        blocks.stream().collect(Collectors.toMap(BlockRisk::step, Bar::of, Bar::and)).values().stream()
                .filter(bar -> scale.shows(bar.likely().minusMinutes(1), bar.late().plusMinutes(1)))
                .sorted(Comparator.comparing(Bar::likely).thenComparing(bar -> numbers.get(bar.step()))).forEach(bar -> row(bar).add(bar));
    }

    /** One step; groups that do it in turn share its bar. */
    private record Bar(String step, LocalDateTime likely, LocalDateTime late) {
        static Bar of(BlockRisk block) {
            return new Bar(block.step(), block.likelyEnd(), block.lateEnd());
        }

        Bar and(Bar other) {
            return new Bar(step, likely.isBefore(other.likely) ? likely : other.likely, late.isAfter(other.late) ? late : other.late);
        }
    }

    private List<Bar> row(Bar step) {
        for (List<Bar> row : rows) {
            if (end(row.get(row.size() - 1)) < begin(step)) {
                return row;
            }
        }
        rows.add(new ArrayList<>());
        return rows.get(rows.size() - 1);
    }

    double height() {
        return rows.isEmpty() ? 0 : (rows.size() * ROW + 0.5) * scale.text();
    }

    void draw(Svg svg, double top) {
        double y = top + 0.25 * scale.text();
        for (List<Bar> row : rows) {
            for (Bar step : row) {
                draw(svg, step, y);
            }
            y += ROW * scale.text();
        }
    }

    private void draw(Svg svg, Bar step, double y) {
        double text = scale.text();
        double likely = scale.x(step.likely());
        bar(svg, likely, y, Math.max(2, scale.x(step.late()) - likely), text);
        svg.text(likely - 0.3 * text, y + 0.95 * text, 0.85 * text, String.valueOf(number(step)), "text-anchor=\"end\"");
    }

    /** As in the legend: hollow, with a thick end at the late time. */
    static void bar(Svg svg, double x, double y, double width, double text) {
        svg.rect(x, y + 0.4 * text, width, 0.5 * text, "fill=\"%s\" stroke=\"%s\" stroke-width=\"1\"".formatted(Palette.PAPER, Palette.INK));
        svg.line(x + width, y + 0.15 * text, x + width, y + 1.15 * text, "stroke=\"%s\" stroke-width=\"2\"".formatted(Palette.INK));
    }

    private double begin(Bar step) {
        return scale.x(step.likely()) - Svg.widthOf(String.valueOf(number(step)), 0.85 * scale.text()) - 0.6 * scale.text();
    }

    private double end(Bar step) {
        return scale.x(step.late()) + 2;
    }

    private int number(Bar step) {
        return numbers.get(step.step());
    }
}
