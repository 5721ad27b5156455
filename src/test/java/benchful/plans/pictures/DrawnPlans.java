package benchful.plans.pictures;

import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Proof;
import benchful.core.lesson.Segment;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.TutorLoad;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/** Plans written down by hand, for tests of what is drawn and printed from a plan. */
final class DrawnPlans {
    static final LocalDateTime TEN = LocalDateTime.of(2027, 3, 6, 10, 0);

    private DrawnPlans() {}

    /** A knotted strand in one meeting of three hours, ten minutes over; the glue dries at home. */
    static LessonPlan strand() {
        List<Block> blocks = List.of(
                block("welcome", "Welcome and safety talk", StepKind.TOGETHER, Lane.CLASS, 0, 10, true),
                block("show", "Watch: the first knot", StepKind.SHOW, Lane.CLASS, 10, 25, true),
                block("soak", "Soak and hang the silk", StepKind.WAIT, Lane.WAIT, 25, 45, false),
                block("lay", "Lay the beads out in order", StepKind.MAKE, Lane.CLASS, 25, 40, false),
                new Block("knot", "Knot the strand <bead by bead>", StepKind.MAKE, Lane.CLASS, 0, at(45), at(170),
                        List.of(new Segment(at(45), at(90)), new Segment(at(105), at(170))), List.of(), Duration.ZERO, true, 0.5, List.of()),
                block("tip", "Close the tip", StepKind.MAKE, Lane.CLASS, 170, 173, true),
                new Block("cure", "Leave the glue to cure", StepKind.WAIT, Lane.HOME, 0, at(173), at(173 + 1440),
                        List.of(new Segment(at(173), at(173 + 1440))), List.of(), Duration.ZERO, false, 0, List.of()),
                block("tidy", "Tidy up", StepKind.TOGETHER, Lane.CLASS, 173, 190, true));
        TutorLoad tutor = new TutorLoad(List.of(new TutorLoad.Span(at(0), at(25), "Watch: the first knot", 1, 0),
                new TutorLoad.Span(at(45), at(90), "Knot the strand", 0.6, 0), new TutorLoad.Span(at(105), at(170), "Knot the strand", 0.35, 0)), 1, 0.5);
        return new LessonPlan(blocks, at(0), at(190), at(180), List.of(new MeetingPlan(1, at(0), at(180), at(190),
                blocks.stream().map(Block::step).toList())), tutor, Duration.ofMinutes(5), new Proof(Proof.Method.LIST, Pacing.TOGETHER, at(185), at(190)),
                new Preparation(List.of()));
    }

    static List<Break> pause() {
        return List.of(new Break("Break", at(90), at(105)));
    }

    static LocalDateTime at(int minutes) {
        return TEN.plusMinutes(minutes);
    }

    private static Block block(String id, String title, StepKind kind, Lane lane, int from, int to, boolean critical) {
        return new Block(id, title, kind, lane, 0, at(from), at(to), List.of(new Segment(at(from), at(to))), List.of(),
                critical ? Duration.ZERO : Duration.ofMinutes(5), critical, 0.5, List.of());
    }
}
