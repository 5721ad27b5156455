package benchful.plans;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Segment;
import benchful.core.lesson.TutorLoad;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** One meeting of the timed plan's picture: its hours as a scale, and below it the lanes. */
final class PlanPanel {
    private static final int[] TICKS = {5, 10, 15, 30, 60, 120, 240, 720, 1440};

    /** Heights of lanes, in heights of letters. */
    private static final double CLASS = 5.7;
    private static final double TUTOR = 2.4;
    private static final double WAIT = 2.7;

    private final PlanPicture picture;
    private final MeetingPlan meeting;
    private final Map<String, Integer> numbers;
    private final Svg svg;
    private final double text;
    private final double left;
    private final LocalDateTime from;
    private final LocalDateTime to;

    PlanPanel(PlanPicture picture, MeetingPlan meeting, Map<String, Integer> numbers, Svg svg) {
        this.picture = picture;
        this.meeting = meeting;
        this.numbers = numbers;
        this.svg = svg;
        this.text = picture.text();
        this.left = 6.6 * text;
        this.from = meeting.start();
        this.to = meeting.finish().isAfter(meeting.end()) ? meeting.finish() : meeting.end();
    }

    /** Draws from {@code top} down and answers where it ends. */
    double draw(double top) {
        double lanes = heading(top) + 1.8 * text;
        double bottom = lanes + laneHeights();
        background(lanes, bottom);
        bookedEnd(lanes, bottom);
        double y = lane("Class", rows(Set.of(Lane.CLASS)), lanes, CLASS * text);
        y = tutor(y);
        y = lane("Waits", rows(Set.of(Lane.WAIT, Lane.HOME)), y, WAIT * text);
        return lane("Equipment", rows(Set.of(Lane.EQUIPMENT)), y, WAIT * text);
    }

    private double laneHeights() {
        int waits = rows(Set.of(Lane.WAIT, Lane.HOME)).size() + rows(Set.of(Lane.EQUIPMENT)).size();
        return (rows(Set.of(Lane.CLASS)).size() * CLASS + TUTOR + waits * WAIT) * text;
    }

    private double heading(double top) {
        String number = picture.plan().meetings().size() > 1 ? "Meeting %d, ".formatted(meeting.number()) : "";
        String hours = "%s%s to %s".formatted(number, Formats.words(meeting.start()), Formats.clock(meeting.end()));
        svg.text(0, top + 1.1 * text, 1.05 * text, hours, "font-weight=\"bold\"");
        return top + 1.8 * text;
    }

    private void background(double lanes, double bottom) {
        picture.breaks().stream().filter(this::within).forEach(pause -> pause(pause, lanes, bottom));
        int every = tick();
        LocalDateTime at = from.withMinute(0).withSecond(0).withNano(0);
        for (; !at.isAfter(to); at = at.plusMinutes(every)) {
            if (!at.isBefore(from)) {
                svg.line(x(at), lanes - 0.35 * text, x(at), bottom, "stroke=\"%s\" stroke-width=\"0.7\"".formatted(Svg.LINE));
                svg.text(x(at), lanes - 0.6 * text, 0.9 * text, Formats.clock(at), "text-anchor=\"%s\" fill=\"%s\"".formatted(anchor(at), Svg.QUIET));
            }
        }
    }

    private String anchor(LocalDateTime at) {
        return x(at) > picture.width() - 1.5 * text ? "end" : "middle";
    }

    /** The closest ticks whose labels do not touch. */
    private int tick() {
        double pixels = (picture.width() - left) / Math.max(1, Duration.between(from, to).toMinutes());
        return IntStream.of(TICKS).filter(minutes -> minutes * pixels >= 3.6 * text).findFirst().orElse(TICKS[TICKS.length - 1]);
    }

    private boolean within(Break pause) {
        return pause.start().isBefore(to) && pause.end().isAfter(from);
    }

    private void pause(Break pause, double lanes, double bottom) {
        double x = x(pause.start());
        svg.rect(x, lanes, x(pause.end()) - x, bottom - lanes, "fill=\"#f3efe4\"");
        double middle = (x + x(pause.end())) / 2;
        double y = lanes + 2.3 * text;
        svg.text(middle, y, 0.9 * text, "Break", "text-anchor=\"middle\" transform=\"rotate(-90 %s %s)\" fill=\"%s\""
                .formatted(Svg.n(middle + 0.3 * text), Svg.n(y), Svg.QUIET));
    }

    /** Blocks of these lanes that fall into the meeting, spread over rows so that none covers another. */
    private List<List<Block>> rows(Set<Lane> lanes) {
        List<List<Block>> rows = new ArrayList<>();
        picture.plan().blocks().stream()
                .filter(block -> lanes.contains(block.lane()) && block.start().isBefore(to) && block.end().isAfter(from))
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
                double before = i > 0 ? x(row.get(i - 1).end()) : left;
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
        svg.line(0, bottom, picture.width(), bottom, "stroke=\"%s\" stroke-width=\"0.7\"".formatted(Svg.LINE));
    }

    private void shape(Block block, double y, double height, double before, double next) {
        for (Segment part : block.segments()) {
            if (part.start().isBefore(to) && part.end().isAfter(from)) {
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
        return block.end().isAfter(to) ? " (ready " + Formats.words(block.end()) + ")" : "";
    }

    /** How busy the tutor is, as a bar as high as the share of time taken. */
    private double tutor(double top) {
        double height = TUTOR * text;
        double room = height - 0.6 * text;
        for (TutorLoad.Span span : picture.plan().tutor().spans()) {
            if (span.start().isBefore(to) && span.end().isAfter(from)) {
                double share = Math.min(1, span.share()) * room;
                double x = x(span.start());
                svg.rect(x, top + height - 0.3 * text - share, x(span.end()) - x, share, "fill=\"#8fb0b9\" stroke=\"%s\" stroke-width=\"0.7\"".formatted(Svg.INK));
            }
        }
        name("Tutor busy", top, top + height);
        return top + height;
    }

    private void bookedEnd(double lanes, double bottom) {
        double x = Math.min(x(meeting.end()), picture.width() - 1);
        svg.line(x, lanes - 0.35 * text, x, bottom, "stroke=\"%s\" stroke-width=\"2.5\"".formatted(Svg.INK));
        if (meeting.finish().isAfter(meeting.end())) {
            svg.hatch(x, lanes - 0.35 * text, picture.width() - x, 0.35 * text, 0.4 * text, "stroke=\"%s\" stroke-width=\"1\"".formatted(Svg.INK));
            String over = "over by " + Formats.words(Duration.between(meeting.end(), meeting.finish()));
            svg.text(picture.width(), lanes - 1.8 * text, 0.9 * text, over, "text-anchor=\"end\" font-weight=\"bold\"");
        }
    }

    private double x(LocalDateTime at) {
        LocalDateTime shown = at.isBefore(from) ? from : at.isAfter(to) ? to : at;
        double share = (double) Duration.between(from, shown).toSeconds() / Math.max(1, Duration.between(from, to).toSeconds());
        return left + share * (picture.width() - left - 1);
    }
}
