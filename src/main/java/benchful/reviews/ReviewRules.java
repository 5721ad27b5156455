package benchful.reviews;

import benchful.core.Fault;
import benchful.web.forms.JsonPointers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What must hold of a review beyond its schema. */
final class ReviewRules {
    private static final Duration LONGEST = Duration.ofDays(60);

    private static final Duration LONGEST_BREAK = Duration.ofHours(12);

    private ReviewRules() {}

    static List<Fault> check(ReviewSpec sheet) {
        List<Fault> faults = new ArrayList<>();
        sheet.steps().forEach((step, note) -> {
            if (note.took() != null && note.ended() != null) {
                faults.add(new Fault(JsonPointers.below("/steps", step) + "/took", "Give either when it ended or how long it took, and leave the other empty."));
            }
            if (note.took() != null && note.took().compareTo(LONGEST) > 0) {
                faults.add(new Fault(JsonPointers.below("/steps", step) + "/took", "A step takes at most 60 days. Write it like 20 min."));
            }
        });
        sheet.breaks().forEach((key, note) -> {
            if (note.took() != null && note.took().compareTo(LONGEST_BREAK) > 0) {
                faults.add(new Fault(JsonPointers.below("/breaks", key) + "/took", "A break takes at most 12 h. Write it like 14 min."));
            }
        });
        return List.copyOf(faults);
    }
}
