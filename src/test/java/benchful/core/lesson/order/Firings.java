package benchful.core.lesson.order;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Lessons whose best order takes a solver long: loads in kilns that never quite fill them. */
public final class Firings {
    private static final LocalDateTime TEN = LocalDateTime.of(2027, 3, 6, 10, 0);

    private Firings() {}

    /** Loads that hold up to three of four kilns' places, some after others. */
    public static LessonRequest.Builder request(long seed, int loads) {
        Random random = new Random(seed);
        LessonRequest.Builder request = LessonRequest.builder().meeting(TEN, TEN.plusHours(8)).tool("a", 12).tool("b", 12).tool("c", 12).tool("d", 12);
        for (int i = 0; i < loads; i++) {
            List<ToolUse> uses = new ArrayList<>();
            for (String kiln : List.of("a", "b", "c", "d")) {
                uses.add(new ToolUse(kiln, 1 + random.nextInt(9)));
            }
            request.step(new Step.Wait("load" + i, "Load " + i, Duration.ofMinutes(1 + random.nextInt(10)), Optional.empty(), uses, false));
            if (i > 4 && random.nextInt(3) > 0) {
                request.link("load" + random.nextInt(i - 3), "load" + i);
            }
        }
        return request;
    }
}
