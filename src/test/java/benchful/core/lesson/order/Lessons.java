package benchful.core.lesson.order;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** The lessons that the tests share: one to read, and as many drawn ones as wanted. */
public final class Lessons {

    public static final LocalDateTime TEN = LocalDateTime.of(2025, 3, 8, 10, 0);

    private Lessons() {
    }

    /** A resin pendant without breaks: the pour cures while the cord is knotted. Invented times. */
    public static LessonRequest.Builder pendant() {
        return LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(3))
                .step(new Step.Together("welcome", "Welcome", Duration.ofMinutes(10)))
                .step(new Step.Show("show", "Show the pour", Duration.ofMinutes(10)))
                .step(new Step.Make("pour", "Pour", StudentTime.ofMinutes(5, 10, 20)))
                .step(new Step.Wait("cure", "Cure under the lamp", Duration.ofMinutes(30)))
                .step(new Step.Make("cord", "Knot the cord", StudentTime.ofMinutes(10, 15, 30)))
                .step(new Step.Make("hang", "Hang the pendant", StudentTime.ofMinutes(3, 5, 9)))
                .link("welcome", "show").link("show", "pour").link("pour", "cure").link("cure", "hang").link("cord", "hang")
                .link("welcome", "cord");
    }

    public static LessonPlan plan(LessonOutcome outcome) {
        if (outcome instanceof Planned planned) {
            return planned.plan();
        }
        throw new AssertionError("No plan but " + outcome);
    }

    /** A sound lesson of 4 to 13 steps with breaks, tools, gaps and sometimes two meetings, drawn from a seed. */
    public static LessonRequest drawn(long seed) {
        Random random = new Random(seed);
        int size = 4 + random.nextInt(10);
        LessonRequest.Builder lesson = LessonRequest.builder().headcount(1 + random.nextInt(14)).helpers(random.nextInt(2));
        lesson.tool("kiln", 1).tool("pliers", 2 + random.nextInt(4));
        hours(lesson, random);
        for (int i = 0; i < size; i++) {
            lesson.step(step("s" + i, random));
            if (i > 0 && random.nextInt(4) > 0) {
                lesson.link(new Link("s" + random.nextInt(i), "s" + i, Duration.ofMinutes(random.nextInt(3) == 0 ? 5 : 0),
                        random.nextInt(6) == 0 ? Optional.of(Duration.ofMinutes(240)) : Optional.empty()));
            }
        }
        return lesson.build();
    }

    private static void hours(LessonRequest.Builder lesson, Random random) {
        lesson.meeting(TEN, TEN.plusHours(2));
        if (random.nextBoolean()) {
            lesson.pause("tea", TEN.plusMinutes(50), TEN.plusMinutes(60));
        }
        if (random.nextInt(3) == 0) {
            lesson.meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2));
            lesson.pause("second tea", TEN.plusDays(1).plusMinutes(55), TEN.plusDays(1).plusMinutes(65));
        }
    }

    private static Step step(String id, Random random) {
        int minutes = 1 + random.nextInt(30);
        return switch (random.nextInt(5)) {
            case 0 -> new Step.Show(id, "Show " + id, Duration.ofMinutes(minutes));
            case 1 -> new Step.Wait(id, "Wait " + id, Duration.ofMinutes(minutes), Optional.empty(),
                    random.nextBoolean() ? List.of(new ToolUse("kiln", 1)) : List.of(), random.nextInt(4) == 0);
            case 2 -> new Step.Together(id, "Together " + id, Duration.ofMinutes(minutes));
            default -> new Step.Make(id, "Make " + id, StudentTime.ofMinutes(minutes, minutes + random.nextInt(10), minutes + 20),
                    random.nextInt(3) == 0 ? List.of(new ToolUse("pliers", 1)) : List.of(),
                    random.nextBoolean() ? new Help(2, 2) : Help.NONE, random.nextBoolean() ? 1 : 0.8, random.nextInt(4) > 0);
        };
    }
}
