package benchful.core.day;

import benchful.core.day.Course.Pause;
import benchful.core.day.Running.Presence;
import benchful.core.day.Running.Stage;
import benchful.core.day.Running.Step;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * How often hands went up at each step that students do by themselves, and how long they worked at it. A step counts where it was told when
 * it was over and nothing else of the kind went on beside it, as nobody knows whose hand it was; so nothing is known of groups side by side. Nothing is
 * known either of a class in which hands were not counted at all. Who is absent was never there, who left worked till then.
 * Cost O(n squared) in the taps of a step.
 */
public final class HandsUp {
    private final Running running;

    /**
     * What was seen at one step.
     *
     * @param calls  hands that went up
     * @param atWork time that students worked without a hand up, added up over them, breaks left out
     */
    public record Asked(int calls, Duration atWork) {}

    private HandsUp(Running running) {
        this.running = running;
    }

    /** By the keys of the steps, in their order. */
    public static Map<String, Asked> of(Running running) {
        Map<String, Asked> asked = new LinkedHashMap<>();
        if (running.taps().stream().anyMatch(t -> t.kind() == Tap.Kind.HELP)) {
            HandsUp hands = new HandsUp(running);
            running.steps().stream().filter(hands::isKnown).forEach(s -> asked.put(s.item().key(), new Asked(hands.calls(s), hands.atWork(s))));
        }
        return asked;
    }

    private boolean isKnown(Step step) {
        return isOwn(step) && step.item().group() == 0 && step.stage() == Stage.OVER && running.steps().stream().noneMatch(other -> !other.item().equals(step.item()) && beside(step, other));
    }

    private static boolean isOwn(Step step) {
        return step.item().own() && step.item().handsOn();
    }

    private static boolean beside(Step step, Step other) {
        return isOwn(other) && other.begins().isBefore(step.ends()) && step.begins().isBefore(other.ends());
    }

    private int calls(Step step) {
        int calls = 0;
        int up = 0;
        for (Tap tap : running.taps()) {
            if (tap.kind() == Tap.Kind.HELP) {
                int now = Math.max(0, tap.number());
                calls += tap.at().isBefore(step.begins()) || !tap.at().isBefore(step.ends()) ? 0 : Math.max(0, now - up);
                up = now;
            }
        }
        return calls;
    }

    /** From one moment at which something changed to the next. */
    private Duration atWork(Step step) {
        Duration sum = Duration.ZERO;
        LocalDateTime from = step.begins();
        for (LocalDateTime to : moments(step)) {
            sum = sum.plus(isPause(from, to) ? Duration.ZERO : Duration.between(from, to).multipliedBy(atWork(step, from)));
            from = to;
        }
        return sum;
    }

    private TreeSet<LocalDateTime> moments(Step step) {
        TreeSet<LocalDateTime> moments = new TreeSet<>();
        running.taps().forEach(t -> moments.add(t.at()));
        running.pauses().forEach(p -> moments.addAll(List.of(p.start(), p.end())));
        moments.add(step.ends());
        return new TreeSet<>(moments.subSet(step.begins(), false, step.ends(), true));
    }

    private boolean isPause(LocalDateTime from, LocalDateTime to) {
        return running.pauses().stream().anyMatch((Pause p) -> !p.start().isAfter(from) && !p.end().isBefore(to));
    }

    /** How many work at a moment, and on. */
    private int atWork(Step step, LocalDateTime at) {
        int leftLater = (int) running.taps().stream().filter(t -> t.kind() == Tap.Kind.LEFT && t.at().isAfter(at) && running.seats().get(t.number()) == Presence.LEFT)
                .map(Tap::number).distinct().count();
        return Math.max(0, running.present() + leftLater - last(Tap.Kind.COUNT, step.item().key(), at) - last(Tap.Kind.HELP, null, at));
    }

    /** What was last told up to a moment; 0 before anything was. */
    private int last(Tap.Kind kind, @Nullable String step, LocalDateTime at) {
        return running.taps().stream().filter(t -> t.kind() == kind && (step == null || step.equals(t.step())) && !t.at().isAfter(at))
                .reduce((one, later) -> later).map(t -> Math.max(0, t.number())).orElse(0);
    }
}
