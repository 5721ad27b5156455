package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.order.BenchWork;
import benchful.core.lesson.order.Rest;
import benchful.web.Formats;
import java.time.Duration;
import java.util.List;
import java.util.Set;

/**
 * What the tutor should know of how long students sit at close work: where her rule can't be kept, and where she has none and the
 * usual one is passed over. The usual one stands on the card of the hazard library, with its source.
 */
final class RestAdvice {
    private static final Set<String> CLOSE_WORK = Set.of("eye-strain", "repetitive-work");
    private static final Rest USUAL = new Rest(Duration.ofMinutes(60), Duration.ofMinutes(5));

    private RestAdvice() {}

    static List<Advice> of(ClassFile file, LessonPlan plan) {
        ClassSetup.Rest rule = file.setup().rest();
        if (plan == null || rule == null && HazardIndex.of(file).ids().stream().noneMatch(CLOSE_WORK::contains)) {
            return List.of();
        }
        return BenchWork.tooLong(plan, Rests.of(file).orElse(USUAL)).stream().limit(1)
                .map(stretch -> new Advice("Rest", sentence(stretch, rule, file.setup().meetings().size() > 1))).toList();
    }

    private static String sentence(BenchWork.Stretch stretch, ClassSetup.Rest rule, boolean manyDays) {
        String from = manyDays ? Formats.words(stretch.start()) : Formats.clock(stretch.start());
        String so = "From %s to %s students work at the bench for %s without a rest".formatted(from, Formats.clock(stretch.end()), Formats.words(stretch.worked()));
        return rule == null ? so + "; for close work the usual rule is 5 to 10 min after 50 to 60 (HSE, L26). Write it into the class under “Breaks by a rule”, or move a break."
                : so + ", and no break of %s fits in before. Book more hours, move a break, or let them work for longer than %s.".formatted(Formats.words(rule.lasts()), Formats.words(rule.after()));
    }
}
