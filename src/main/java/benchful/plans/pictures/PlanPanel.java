package benchful.plans.pictures;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Segment;
import benchful.core.lesson.TutorLoad;
import benchful.core.lesson.risk.Risk.BlockRisk;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One meeting of the timed plan's picture: its hours as a scale, and below it the lanes. */
final class PlanPanel {
    /** Heights of lanes, in heights of letters. */
    private static final double CLASS = 5.7;
    private static final double GROUP = 4.2;
    private static final double BUSY = 2.4;
    private static final double WAIT = 2.7;

    private final PlanPicture picture;
    private final MeetingPlan meeting;
    private final Map<String, Integer> numbers;
    private final Svg svg;
    private final double text;
    private final PlanScale scale;

    PlanPanel(PlanPicture picture, MeetingPlan meeting, Map<String, Integer> numbers, Svg svg) {
        this.picture = picture;
        this.meeting = meeting;
        this.numbers = numbers;
        this.svg = svg;
        this.text = picture.text();
        this.scale = new PlanScale(meeting.start(), until(), 6.6 * text, picture.width() - 1, text);
    }

    /** The booked or the planned end, or when nine classes in ten have ended, if that is the same day. */
    private LocalDateTime until() {
        return Stream.concat(Stream.of(meeting.end(), meeting.finish()), ofThisMeeting().map(BlockRisk::lateEnd))
                .filter(end -> end.toLocalDate().equals(meeting.end().toLocalDate()) || end.equals(meeting.finish()))
                .max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Draws from {@code top} down and answers where it ends. */
    double draw(double top) {
        double lanes = heading(top) + 1.8 * text;
        LateLane late = new LateLane(scale, numbers, ofThisMeeting().toList());
        List<TutorLoad.Span> spans = picture.plan().tutor().spans();
        BusyLane tutor = new BusyLane(scale, spans, TutorLoad.Span::share);
        BusyLane helpers = new BusyLane(scale, spans, TutorLoad.Span::helping);
        double bottom = lanes + laneHeights() + late.height() + (helpers.isEmpty() ? 1 : 2) * BUSY * text;
        background(lanes, bottom);
        bookedEnd(lanes, bottom);
        double y = hands(lanes);
        y = late(late, y);
        y = busy("Tutor busy", tutor, y);
        y = helpers.isEmpty() ? y : busy("Helpers", helpers, y);
        y = lane("Waits", rows(Set.of(Lane.WAIT, Lane.HOME)), y, WAIT * text);
        return lane("Equipment", rows(Set.of(Lane.EQUIPMENT)), y, WAIT * text);
    }

    private double laneHeights() {
        int waits = rows(Set.of(Lane.WAIT, Lane.HOME)).size() + rows(Set.of(Lane.EQUIPMENT)).size();
        double hands = groups() > 0 ? groups() * GROUP : rows(Set.of(Lane.CLASS)).size() * CLASS;
        return (hands + waits * WAIT) * text;
    }

    /** Simulated ends of the blocks that fall into this meeting and keep hands busy. */
    private Stream<BlockRisk> ofThisMeeting() {
        Set<String> here = picture.plan().blocks().stream().filter(block -> block.lane() == Lane.CLASS && meeting.steps().contains(block.step()))
                .map(Block::step).collect(Collectors.toSet());
        return picture.risks().stream().filter(block -> here.contains(block.step()) && block.lateEnd().isAfter(meeting.start()));
    }

    /** The class, or each group in a lane of its own; what all do together stands across the lanes. */
    private double hands(double top) {
        if (groups() == 0) {
            return lane("Class", rows(Set.of(Lane.CLASS)), top, CLASS * text);
        }
        double height = GROUP * text;
        for (int group = 1; group <= groups(); group++) {
            name("Group " + group, top + (group - 1) * height, top + group * height);
        }
        picture.plan().blocks().stream().filter(block -> block.lane() == Lane.CLASS && scale.shows(block.start(), block.end())).forEach(block -> {
            double y = top + Math.max(0, block.group() - 1) * height + 0.3 * text;
            double tall = (block.group() == 0 ? groups() * height : height) - 0.6 * text;
            shape(block, y, tall, scale.left(), picture.width());
        });
        return top + groups() * height;
    }

    /** 0 for the whole class together. */
    private int groups() {
        return picture.plan().blocks().stream().mapToInt(Block::group).max().orElse(0);
    }

    private double late(LateLane late, double top) {
        if (late.height() > 0) {
            late.draw(svg, top);
            name("Late ends", top - 0.4 * text, top + late.height());
        }
        return top + late.height();
    }

    private double busy(String name, BusyLane lane, double top) {
        lane.draw(svg, top, BUSY * text);
        name(name, top, top + BUSY * text);
        return top + BUSY * text;
    }

    private double heading(double top) {
        String number = picture.plan().meetings().size() > 1 ? "Meeting %d, ".formatted(meeting.number()) : "";
        String hours = "%s%s to %s".formatted(number, Formats.words(meeting.start()), Formats.clock(meeting.end()));
        svg.text(0, top + 1.1 * text, 1.05 * text, hours, "font-weight=\"bold\"");
        return top + 1.8 * text;
    }

    private void background(double lanes, double bottom) {
        picture.breaks().stream().filter(this::within).forEach(pause -> pause(pause, lanes, bottom));
        double written = Double.NEGATIVE_INFINITY;
        for (LocalDateTime at : scale.ticks()) {
            svg.line(x(at), lanes - 0.35 * text, x(at), bottom, "stroke=\"%s\" stroke-width=\"0.7\"".formatted(Palette.LINE));
            if (anchor(at).equals("end") && x(at) - written < 4.1 * text) {
                continue; // it would run into the label before it
            }
            written = x(at);
            svg.text(x(at), lanes - 0.6 * text, 0.9 * text, Formats.clock(at), "text-anchor=\"%s\" fill=\"%s\"".formatted(anchor(at), Palette.QUIET));
        }
    }

    private String anchor(LocalDateTime at) {
        return x(at) > picture.width() - 1.5 * text ? "end" : "middle";
    }

    private boolean within(Break pause) {
        return scale.shows(pause.start(), pause.end());
    }

    private void pause(Break pause, double lanes, double bottom) {
        double x = x(pause.start());
        svg.rect(x, lanes, x(pause.end()) - x, bottom - lanes, "fill=\"%s\"".formatted(Palette.REST));
        double middle = (x + x(pause.end())) / 2;
        double y = lanes + 2.3 * text;
        svg.text(middle, y, 0.9 * text, "Break", "text-anchor=\"middle\" transform=\"rotate(-90 %s %s)\" fill=\"%s\""
                .formatted(Svg.n(middle + 0.3 * text), Svg.n(y), Palette.QUIET));
    }

    /** Blocks of these lanes that fall into the meeting, spread over rows so that none covers another. */
    private List<List<Block>> rows(Set<Lane> lanes) {
        List<List<Block>> rows = new ArrayList<>();
        picture.plan().blocks().stream()
                .filter(block -> lanes.contains(block.lane()) && scale.shows(block.start(), block.end()))
                .sorted(Comparator.comparing(Block::start))
                .forEach(block -> row(rows, block).add(block));
        return rows;
    }

    private static List<Block> row(List<List<Block>> rows, Block block) {
        for (List<Block> row : rows) {
            if (!row.get(row.size() - 1).end().isAfter(block.start())) {
                return row;
            }
        }
        rows.add(new ArrayList<>());
        return rows.get(rows.size() - 1);
    }

    private double lane(String name, List<List<Block>> rows, double top, double height) {
        double y = top;
        for (List<Block> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                double before = i > 0 ? x(row.get(i - 1).end()) : scale.left();
                double next = i + 1 < row.size() ? x(row.get(i + 1).start()) : picture.width();
                shape(row.get(i), y + 0.3 * text, height - 0.6 * text, before, next);
            }
            y += height;
        }
        if (!rows.isEmpty()) {
            name(name, top, y);
        }
        return y;
    }

    private void name(String name, double top, double bottom) {
        svg.text(0, top + 1.6 * text, text, name, "font-weight=\"bold\"");
        svg.line(0, bottom, picture.width(), bottom, "stroke=\"%s\" stroke-width=\"0.7\"".formatted(Palette.LINE));
    }

    private void shape(Block block, double y, double height, double before, double next) {
        for (Segment part : block.segments()) {
            if (scale.shows(part.start(), part.end())) {
                double x = x(part.start());
                double end = x(part.end());
                PlanBox.draw(svg, block.kind(), block.critical(), x, y, end - x, height, text);
                labelOf(block, new PlanLabel.Place(before, x, end, next)).draw(y, height);
            }
        }
    }

    private PlanLabel labelOf(Block block, PlanLabel.Place place) {
        int number = numbers.get(block.step());
        return new PlanLabel(svg, text, number, number + " " + block.title() + later(block), place, block.lane() == Lane.CLASS);
    }

    private String later(Block block) {
        return block.end().isAfter(scale.to()) ? " (ready " + Formats.words(block.end()) + ")" : "";
    }

    private void bookedEnd(double lanes, double bottom) {
        double x = Math.min(x(meeting.end()), picture.width() - 1);
        svg.line(x, lanes - 0.35 * text, x, bottom, "stroke=\"%s\" stroke-width=\"2.5\"".formatted(Palette.INK));
        if (meeting.finish().isAfter(meeting.end())) {
            svg.hatch(x, lanes - 0.35 * text, x(meeting.finish()) - x, 0.35 * text, 0.4 * text, "stroke=\"%s\" stroke-width=\"1\"".formatted(Palette.INK));
            String over = "over by " + Formats.words(Duration.between(meeting.end(), meeting.finish()));
            svg.text(picture.width(), lanes - 1.8 * text, 0.9 * text, over, "text-anchor=\"end\" font-weight=\"bold\"");
        }
    }

    private double x(LocalDateTime at) {
        return scale.x(at);
    }
}
