package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.order.BenchWork;
import benchful.core.lesson.order.Rest;
import benchful.core.quantity.Sentence;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalTime;
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

    private static final Sentence MOVE = Sentence.plain("move a break");

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
        return advice(stretch, file, Sentence.of(", and no break of %s fits in before. Book more hours, move a break, or let them work for longer than %s.",
                Formats.words(rule.lasts()), Formats.words(rule.after())));
    }

    private static Advice passedOver(BenchWork.Stretch stretch, ClassFile file) {
        return advice(stretch, file, Sentence.of("; for close work the usual rule is 5 to 10 min after 50 to 60 (HSE, L26). Write it into the class under “Breaks by a rule”, or %s.",
                otherwise(file)));
    }

    private static Advice advice(BenchWork.Stretch stretch, ClassFile file, Sentence then) {
        Object from = file.setup().meetings().size() > 1 ? stretch.start() : stretch.start().toLocalTime();
        return new Advice("Rest", Sentence.of("From %s to %s students work at the bench for %s without a rest%s", from, stretch.end().toLocalTime(), Formats.words(stretch.worked()), then));
    }

    /** What to do with the one break of a class of one meeting, where moving it, or else taking it in halves, makes every stretch short enough. */
    private static Sentence otherwise(ClassFile file) {
        ClassSetup setup = file.setup();
        if (setup.meetings().size() > 1 || setup.breaks().size() != 1) {
            return MOVE;
        }
        ClassSetup.Break pause = setup.breaks().get(0);
        Duration half = Duration.ofMinutes(pause.lasts().toMinutes() / 2);
        ClassFile without = file.with(setup.withBreaks(List.of()));
        return rests(without, pause.lasts(), 1).map(rest -> Sentence.of("take the break at %s", begin(rest, 0)))
                .or(() -> rests(without, half, 2).map(two -> Sentence.of("split the break of %s: %s at %s and %s at %s", Formats.words(pause.lasts()),
                        Formats.words(pause.lasts().minus(half)), begin(two, 0), Formats.words(half), begin(two, 1))))
                .orElse(MOVE);
    }

    private static LocalTime begin(List<Break> rests, int number) {
        return rests.get(number).start().toLocalTime();
    }

    private static Optional<List<Break>> rests(ClassFile without, Duration each, int number) {
        return each.compareTo(USUAL.lasts()) < 0 ? Optional.empty() : Rests.enough(without, new Rest(USUAL.after(), each), number);
    }
}
