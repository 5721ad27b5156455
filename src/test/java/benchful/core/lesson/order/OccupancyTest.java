package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two kilns and a fan. A length of seven keeps the grain at a minute. */
class OccupancyTest {

    private final Model model = new ModelBuilder(LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).tool("kiln", 2).tool("fan", 1)
            .pause("Tea", TEN.plusMinutes(60), TEN.plusMinutes(70))
            .step(wait("long", 20, use("kiln", 1))).step(wait("short", 10, use("kiln", 1))).step(wait("both", 15, use("kiln", 2))).step(wait("seven", 7, use("kiln", 1)))
            .step(wait("fan", 10, use("fan", 1))).step(new Step.Show("talk", "talk", Duration.ofMinutes(9))).build()).build();
    private final Occupancy occupancy = new Occupancy(model);

    private static Step wait(String id, int minutes, ToolUse use) {
        return new Step.Wait(id, id, Duration.ofMinutes(minutes), Optional.empty(), List.of(use), false);
    }

    private static ToolUse use(String tool, int units) {
        return new ToolUse(tool, units);
    }

    private Activity activity(String id) {
        return model.activities().stream().filter(activity -> activity.step().id().equals(id)).findFirst().orElseThrow();
    }

    private long room(String id, long from) {
        return occupancy.firstRoom(activity(id), from);
    }

    /** One kiln from 0 to 20, the other from 5 to 15. */
    @Test
    void waitsUntilEnoughIsFree() {
        occupancy.place(activity("long"), 0);
        occupancy.place(activity("short"), 5);
        assertThat(room("seven", 0)).as("just five minutes").isEqualTo(15);
        assertThat(room("both", 0)).isEqualTo(20);
        assertThat(room("both", 21)).isEqualTo(21);
        assertThat(room("fan", 0)).isZero();
    }

    @Test
    void fitsBetweenWhatIsPlaced() {
        occupancy.place(activity("both"), 0);
        occupancy.place(activity("long"), 22);
        occupancy.place(activity("short"), 22);
        assertThat(room("seven", 0)).as("from 15 to 22").isEqualTo(15);
        assertThat(room("seven", 16)).as("till 32").isEqualTo(32);
    }

    @Test
    void beginsNothingInABreak() {
        assertThat(room("talk", 51)).isEqualTo(51);
        assertThat(room("talk", 52)).isEqualTo(70);
        occupancy.place(activity("talk"), 70);
        assertThat(room("talk", 52)).isEqualTo(79);
        assertThat(room("seven", 62)).as("nobody is needed for it").isEqualTo(62);
    }
}
