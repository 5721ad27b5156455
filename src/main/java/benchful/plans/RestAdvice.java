package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.order.BenchWork;
import benchful.core.lesson.order.Rest;
import benchful.web.Formats;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the tutor should know of how long students sit at close work: where her rule can't be kept, and where she has none and the
 * usual one is passed over. The usual one stands on the card of the hazard library, with its source.
 */
final class RestAdvice {
    private static final Set<String> CLOSE_WORK = Set.of("eye-strain", "repetitive-work");
    private static final Rest USUAL = new Rest(Duration.ofMinutes(60), Duration.ofMinutes(5));

    private RestAdvice() {}

    static List<Advice> of(ClassFile file, LessonPlan plan) {
        if (plan == null) {
            return List.of();
        }
        Optional<Rest> rule = Rests.of(file);
        Stream<Advice> own = rule.stream().flatMap(one -> BenchWork.tooLong(plan, one).stream().map(stretch -> notKept(stretch, one, file)));
        Stream<Advice> usual = BenchWork.tooLong(plan, USUAL).stream().filter(stretch -> rule.filter(one -> one.isFor(stretch.start())).isEmpty() && isClose(file))
                .map(stretch -> passedOver(stretch, file));
        return Stream.concat(own, usual).limit(1).toList();
    }

    private static boolean isClose(ClassFile file) {
        return HazardIndex.of(file).ids().stream().anyMatch(CLOSE_WORK::contains);
    }

    private static Advice notKept(BenchWork.Stretch stretch, Rest rule, ClassFile file) {
        return advice(stretch, file, ", and no break of %s fits in before. Book more hours, move a break, or let them work for longer than %s."
                .formatted(Formats.words(rule.lasts()), Formats.words(rule.after())));
    }

    private static Advice passedOver(BenchWork.Stretch stretch, ClassFile file) {
        return advice(stretch, file, "; for close work the usual rule is 5 to 10 min after 50 to 60 (HSE, L26). Write it into the class under “Breaks by a rule”, or %s."
                .formatted(otherwise(file)));
    }

    private static Advice advice(BenchWork.Stretch stretch, ClassFile file, String then) {
        String from = file.setup().meetings().size() > 1 ? Formats.words(stretch.start()) : Formats.clock(stretch.start());
        return new Advice("Rest", "From %s to %s students work at the bench for %s without a rest".formatted(from, Formats.clock(stretch.end()), Formats.words(stretch.worked())) + then);
    }

    /** What to do with the one break of a class of one meeting, where moving it, or else taking it in halves, makes every stretch short enough. */
    private static String otherwise(ClassFile file) {
        ClassSetup setup = file.setup();
        if (setup.meetings().size() > 1 || setup.breaks().size() != 1) {
            return "move a break";
        }
        ClassSetup.Break pause = setup.breaks().get(0);
        Duration half = Duration.ofMinutes(pause.lasts().toMinutes() / 2);
        ClassFile without = file.with(setup.withBreaks(List.of()));
        return rests(without, pause.lasts(), 1).map(rest -> "take the break at %s".formatted(Formats.clock(rest.get(0).start())))
                .or(() -> rests(without, half, 2).map(two -> "split the break of %s: %s at %s and %s at %s".formatted(Formats.words(pause.lasts()),
                        Formats.words(pause.lasts().minus(half)), Formats.clock(two.get(0).start()), Formats.words(half), Formats.clock(two.get(1).start()))))
                .orElse("move a break");
    }

    private static Optional<List<Break>> rests(ClassFile without, Duration each, int number) {
        return each.compareTo(USUAL.lasts()) < 0 ? Optional.empty() : Rests.enough(without, new Rest(USUAL.after(), each), number);
    }
}
