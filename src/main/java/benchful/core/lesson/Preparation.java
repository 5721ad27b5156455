package benchful.core.lesson;

import java.time.Duration;
import java.util.List;

/** What the tutor does before the class. */
public record Preparation(List<Item> items) {

    /** One step done ahead, with the tutor's time for the whole class. */
    public record Item(String step, String title, Duration length, Reason reason) {
    }

    public Preparation {
        items = List.copyOf(items);
    }

    public Duration total() {
        return items.stream().map(Item::length).reduce(Duration.ZERO, Duration::plus);
    }
}
