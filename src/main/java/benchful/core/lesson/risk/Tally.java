package benchful.core.lesson.risk;

import benchful.core.lesson.risk.Risk.BlockRisk;
import benchful.core.lesson.risk.Risk.Cause;
import benchful.core.lesson.risk.Risk.SpareTime;
import benchful.core.lesson.risk.Risk.Waiting;
import benchful.core.lesson.risk.Script.CauseOf;
import benchful.core.lesson.risk.Script.Part;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Counts what became of the classes played, and sums it up as a {@link Risk}. */
final class Tally {

    private static final double LIKELY = 0.5;
    static final double LATE = 0.9;
    private static final int TWENTIETHS = 20;
    /** A spare time from which quick students should be given more to do (common practice, no source). */
    private static final Duration WORTH_FILLING = Duration.ofMinutes(10);

    private final Script script;
    private final int classes;
    private final float[][] starts;
    private final float[][] ends;
    private final float[][] longest;
    private final float[] finishes;
    private final double[] unfinished;
    private final double[] spare;
    private final double[] lost;
    private final Ages ages;

    Tally(Script script, int classes) {
        this.script = script;
        this.classes = classes;
        int parts = script.parts().size();
        starts = new float[parts][classes];
        ends = new float[parts][classes];
        longest = new float[script.causes().size()][classes];
        finishes = new float[classes];
        unfinished = new double[parts];
        spare = new double[parts];
        lost = new double[script.causes().size()];
        ages = new Ages(script, classes);
    }

    void add(int number, Replication played) {
        for (Part part : script.parts()) {
            int i = part.index();
            starts[i][number] = (float) played.start[i];
            ends[i][number] = (float) played.end[i];
            unfinished[i] += played.unfinished[i];
            spare[i] += played.spare[i];
            if (part.counts()) {
                finishes[number] = Math.max(finishes[number], ends[i][number]);
            }
        }
        for (int cause = 0; cause < lost.length; cause++) {
            addLost(cause, number, played.lost[cause]);
        }
        ages.add(number, played);
    }

    private void addLost(int cause, int number, double[] students) {
        double most = 0;
        for (double time : students) {
            lost[cause] += time;
            most = Math.max(most, time);
        }
        longest[cause][number] = (float) most;
    }

    Risk risk() {
        Arrays.sort(finishes);
        LocalDateTime booked = script.plan().bookedEnd();
        long inTime = IntStream.range(0, classes).filter(i -> !script.clock().time(finishes[i]).isAfter(booked)).count();
        List<LocalDateTime> twentieths = IntStream.rangeClosed(0, TWENTIETHS)
                .mapToObj(i -> script.clock().time(sorted(finishes, i / (double) TWENTIETHS))).toList();
        return new Risk(classes, script.promise(), inTime / (double) classes, script.clock().time(sorted(finishes, LIKELY)),
                script.clock().time(sorted(finishes, LATE)), script.clock().time(sorted(finishes, script.promise())), twentieths,
                script.parts().stream().map(this::block).toList(), ages.tooOld(), waiting(), extensions());
    }

    /** The time that a share of the classes kept to, of times in order. */
    static float sorted(float[] times, double share) {
        return times[Math.max(0, (int) Math.ceil(share * times.length) - 1)];
    }

    private float quantile(float[] times, double share) {
        return Selection.smallest(times, Math.max(0, (int) Math.ceil(share * classes) - 1));
    }

    private BlockRisk block(Part part) {
        int i = part.index();
        return new BlockRisk(part.step(), part.group(), script.clock().time(quantile(starts[i], LIKELY)),
                script.clock().time(quantile(ends[i], LIKELY)), script.clock().time(quantile(ends[i], LATE)),
                script.clock().time(quantile(starts[i], script.promise())), script.clock().time(quantile(ends[i], script.promise())),
                unfinished[i] / classes);
    }

    private List<Waiting> waiting() {
        List<Waiting> waiting = new ArrayList<>();
        for (int cause = 0; cause < lost.length; cause++) {
            Duration mean = Duration.ofSeconds(Math.round(lost[cause] / classes / script.students().length));
            if (!mean.isZero()) {
                Duration most = Duration.ofSeconds(Math.round(quantile(longest[cause], LATE)));
                waiting.add(waiting(script.causes().get(cause), mean, most));
            }
        }
        waiting.sort(Comparator.comparing(Waiting::mean).reversed());
        return waiting;
    }

    private static Waiting waiting(CauseOf of, Duration mean, Duration most) {
        String what = of.cause() == Cause.HELP ? "help" : of.cause() == Cause.TOOL ? of.what()
                : of.cause() == Cause.DRYING ? "\"" + of.what() + "\" to be over" : "the others before \"" + of.what() + "\"";
        return new Waiting(of.cause(), of.what(), mean, most, "A student waits " + tenths(mean) + " min for " + what
                + " on average; in nine classes of ten nobody waits longer than " + tenths(most) + " min.");
    }

    private static String tenths(Duration length) {
        return String.format(java.util.Locale.ROOT, "%.1f", length.toSeconds() / 60.0);
    }

    private List<SpareTime> extensions() {
        return script.parts().stream().map(part -> new SpareTime(part.title(),
                        Duration.ofSeconds(Math.round(spare[part.index()] / classes)), ""))
                .filter(gathering -> gathering.spare().compareTo(WORTH_FILLING) >= 0)
                .map(gathering -> new SpareTime(gathering.before(), gathering.spare(), "The quickest quarter has "
                        + tenths(gathering.spare()) + " min to spare before \"" + gathering.before() + "\": have more work ready for them."))
                .toList();
    }
}
