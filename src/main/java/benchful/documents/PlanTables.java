package benchful.documents;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.plans.ClassPlan;
import benchful.plans.PlanPicture;
import benchful.plans.StepNumbers;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Fills the timed plan's picture and table. */
final class PlanTables {
    private final ClassPlan plan;
    private final LessonPlan lesson;
    private final List<Break> breaks;
    private final Map<String, Integer> numbers;
    private final boolean days;

    PlanTables(PrintSource source) {
        this.plan = source.plan();
        this.lesson = source.lesson();
        this.breaks = source.plan().breaks();
        this.numbers = StepNumbers.of(lesson);
        this.days = lesson.meetings().size() > 1;
    }

    /** @param width of the picture and @param text size of its letters [px]: their ratio decides how it reads on paper */
    PlanTable table(PictureBag bag, int width, int text) {
        String svg = PlanPicture.of(plan).sized(width, text).svg();
        HandoutSheet.Figure picture = new HandoutSheet.Figure(bag.drawing("plan", svg), "The timed plan as a picture; the table below says the same.");
        List<PlanTable.Ahead> ahead = lesson.preparation().items().stream().map(item -> new PlanTable.Ahead(item.title(), Formats.words(item.length()))).toList();
        return new PlanTable(picture, verdict(), rows(), ahead);
    }

    List<PlanTable.Row> rows() {
        return Stream.concat(lesson.blocks().stream().map(block -> new Timed(block.start(), numbers.get(block.step()), row(block))),
                        breaks.stream().map(pause -> new Timed(pause.start(), 0, row(pause))))
                .sorted(Comparator.comparing(Timed::start).thenComparing(Timed::number)).map(Timed::row).toList();
    }

    private record Timed(LocalDateTime start, int number, PlanTable.Row row) {}

    private String verdict() {
        String end = days ? Formats.words(lesson.finish()) : Formats.clock(lesson.finish());
        return lesson.fits() ? "Ends at about %s, %s before the booked end.".formatted(end, Formats.words(lesson.spare()))
                : "Ends at about %s: %s over the booked end.".formatted(end, Formats.words(lesson.over()));
    }

    private PlanTable.Row row(Block block) {
        String tools = block.uses().stream().map(use -> use.units() + " " + use.tool()).collect(Collectors.joining(", "));
        return new PlanTable.Row(clock(block), Formats.words(block.length()), String.valueOf(numbers.get(block.step())),
                block.title() + (block.group() == 0 ? "" : ", group " + block.group()), Formats.word(block.kind()), tools, remark(block), false);
    }

    private PlanTable.Row row(Break pause) {
        return new PlanTable.Row(List.of(span(pause.start(), pause.end())), Formats.words(Duration.between(pause.start(), pause.end())), "", pause.title(), "", "", "", true);
    }

    private List<String> clock(Block block) {
        return block.segments().isEmpty() ? List.of(span(block.start(), block.end()))
                : block.segments().stream().map(part -> span(part.start(), part.end())).toList();
    }

    private String span(LocalDateTime from, LocalDateTime to) {
        String start = days ? Formats.words(from) : Formats.clock(from);
        return start + "–" + (from.toLocalDate().equals(to.toLocalDate()) ? Formats.clock(to) : Formats.words(to));
    }

    private static String remark(Block block) {
        if (block.lane() == Lane.HOME) {
            return "goes on at home";
        }
        return block.critical() ? "decides the end" : block.slack().isZero() ? "" : "may start " + Formats.words(block.slack()) + " later";
    }
}
