package benchful.documents.lists;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Reason;
import benchful.core.lesson.StepKind;
import benchful.documents.handout.HandoutContent;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.plans.BetweenMeetings;
import benchful.plans.StepNumbers;
import benchful.plans.Timing;
import benchful.plans.pictures.PlanPicture;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Fills the timed plan's picture and table. */
public final class PlanTableWriter {
    /** On a page on its side letters come out at 18 pt. */
    private static final int LARGE_WIDTH = 720;
    private static final int LARGE_TEXT = 18;
    private static final Pattern TIMES = Pattern.compile("\\d+ times");

    private final Timing plan;
    private final LessonPlan lesson;
    private final List<Break> breaks;
    private final Map<String, Integer> numbers;
    private final List<BetweenMeetings.Item> outside;

    public PlanTableWriter(PrintSource source) {
        this.plan = source.plan().timing();
        this.lesson = plan.lesson();
        this.breaks = plan.breaks();
        this.numbers = StepNumbers.of(lesson);
        this.outside = BetweenMeetings.of(source.file().project(), lesson);
    }

    /** On a page on its side. */
    PlanTable wide(PictureBag bag, Version version) {
        return table(bag, version, 1080, 14);
    }

    /** On an upright page; on its side in large print. */
    public PlanTable upright(PictureBag bag, Version version) {
        return table(bag, version, 800, 13);
    }

    /**
     * @param width of the picture [px]
     * @param text  size of its letters [px]: their ratio decides how it reads on paper
     */
    private PlanTable table(PictureBag bag, Version version, int width, int text) {
        boolean large = version == Version.LARGE;
        PlanPicture picture = large ? PlanPicture.of(plan).sized(LARGE_WIDTH, LARGE_TEXT) : PlanPicture.of(plan).sized(width, text);
        List<HandoutContent.Figure> pictures = lesson.meetings().stream().map(meeting -> figure(bag, picture, meeting)).toList();
        List<PlanTable.Ahead> ahead = lesson.preparation().items().stream().map(item -> new PlanTable.Ahead(item.title(), Formats.words(item.length()))).toList();
        return new PlanTable(pictures, plan.verdict().words(), large, days(true), ahead);
    }

    /** Each meeting by itself: together they may be taller than what a page has left below its title. */
    private HandoutContent.Figure figure(PictureBag bag, PlanPicture picture, MeetingPlan meeting) {
        String name = "plan-" + meeting.number();
        return new HandoutContent.Figure(bag.drawing(name, picture.named(name).svg(List.of(meeting))), "The timed plan as a picture; the table below says the same.");
    }

    /** @param breaksToo whether breaks have a row of their own */
    List<PlanTable.Day> days(boolean breaksToo) {
        Map<LocalDate, List<PlanTable.Row>> byDay = Stream.concat(
                        lesson.blocks().stream().map(block -> new Timed(block.start(), numbers.get(block.step()), row(block))),
                        breaks.stream().filter(pause -> breaksToo).map(pause -> new Timed(pause.start(), 0, row(pause))))
                .sorted(Comparator.comparing(Timed::start).thenComparing(Timed::number))
                .collect(Collectors.groupingBy(timed -> timed.start().toLocalDate(), TreeMap::new, Collectors.mapping(Timed::row, Collectors.toList())));
        return byDay.entrySet().stream().map(day -> new PlanTable.Day(byDay.size() > 1 ? Formats.words(day.getKey()) : "", day.getValue())).toList();
    }

    private record Timed(LocalDateTime start, int number, PlanTable.Row row) {}

    private PlanTable.Row row(Block block) {
        String takes = block.kind() == StepKind.COLLECT ? "" : Formats.words(block.length());
        String tools = block.uses().stream().map(use -> use.units() + " " + use.tool()).collect(Collectors.joining(", "));
        return new PlanTable.Row(clock(block), takes, String.valueOf(numbers.get(block.step())),
                title(block), Formats.word(block.kind()), tools, remark(block), false);
    }

    private static PlanTable.Row row(Break pause) {
        return new PlanTable.Row(span(pause.start(), pause.end()), Formats.words(Duration.between(pause.start(), pause.end())), "", pause.title(), "", "", "", true);
    }

    private static List<String> clock(Block block) {
        if (block.kind() == StepKind.COLLECT) {
            return List.of("from " + Formats.clock(block.start()));
        }
        return block.segments().isEmpty() ? span(block.start(), block.end())
                : block.segments().stream().flatMap(part -> span(part.start(), part.end()).stream()).toList();
    }

    /** What ends on another day takes a second line. */
    private static List<String> span(LocalDateTime from, LocalDateTime to) {
        String start = Formats.clock(from) + "–";
        return from.toLocalDate().equals(to.toLocalDate()) ? List.of(start + Formats.clock(to)) : List.of(start, Formats.words(to.toLocalDate()), Formats.clock(to));
    }

    private String remark(Block block) {
        if (block.lane() == Lane.OUTSIDE) {
            return outside.stream().filter(item -> item.step().equals(block.step())).map(item -> item.by() == null ? "" : "done " + item.latest()).findFirst().orElse("");
        }
        if (block.lane() == Lane.HOME) {
            return "goes on at home";
        }
        return block.critical() || block.slack().isZero() ? "" : "may begin %s later".formatted(Formats.words(block.slack()));
    }

    /** "Show the knot, group 2, 3 times". */
    private static String title(Block block) {
        String times = block.kind() != StepKind.SHOW ? "" : block.reasons().stream().filter(why -> why.subject() == Reason.Subject.TURNS).map(why -> TIMES.matcher(why.sentence().toString()))
                .filter(Matcher::find).map(Matcher::group).findFirst().map(", %s"::formatted).orElse("");
        return block.title() + (block.group() == 0 ? "" : ", group " + block.group()) + times;
    }
}
