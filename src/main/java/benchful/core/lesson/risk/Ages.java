package benchful.core.lesson.risk;

import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.risk.Risk.Ageing;
import benchful.core.lesson.risk.Script.Limit;
import benchful.core.lesson.risk.Script.Part;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How old pieces grew in the classes played, where the plan has a greatest wait for them. */
final class Ages {

    /** A clock of half seconds: what is later by no more than rounding is in time. */
    private static final double TOLERANCE = 0.5;

    private final Script script;
    private final int classes;
    private final float[][] oldest;
    private final int[] missed;
    private final long[] students;

    Ages(Script script, int classes) {
        this.script = script;
        this.classes = classes;
        oldest = new float[script.limits().size()][classes];
        missed = new int[script.limits().size()];
        students = new long[script.limits().size()];
    }

    void add(int number, Replication played) {
        for (int i = 0; i < oldest.length; i++) {
            Limit limit = script.limits().get(i);
            Part from = script.parts().get(limit.from());
            Part to = script.parts().get(limit.to());
            int late = 0;
            for (int s = 0; s < script.students().length; s++) {
                double age = played.begun[limit.to()][s] - played.done[limit.from()][s];
                if (script.takesPart(s, from) && script.takesPart(s, to) && age > 0) {
                    oldest[i][number] = Math.max(oldest[i][number], (float) age);
                    late += age > limit.greatest() + TOLERANCE ? 1 : 0;
                }
            }
            missed[i] += late > 0 ? 1 : 0;
            students[i] += late;
        }
    }

    /** The limits that were missed in at least one class of a hundred, the most often missed first. */
    List<Ageing> tooOld() {
        List<Ageing> all = new ArrayList<>();
        for (int i = 0; i < oldest.length; i++) {
            if (missed[i] * 100L >= classes) {
                all.add(ageing(i));
            }
        }
        all.sort((one, other) -> Double.compare(other.classes(), one.classes()));
        return all;
    }

    private Ageing ageing(int i) {
        Limit limit = script.limits().get(i);
        Part from = script.parts().get(limit.from());
        Part to = script.parts().get(limit.to());
        Arrays.sort(oldest[i]);
        Duration age = Duration.ofSeconds(Math.round(Tally.sorted(oldest[i], Tally.LATE)));
        Duration greatest = Duration.ofSeconds(Math.round(limit.greatest()));
        double share = missed[i] / (double) classes;
        String often = age.compareTo(greatest) > 0 ? "; in one of ten it is %s or more".formatted(MinuteWords.minutes(age)) : "";
        String sentence = "In %d of 100 classes at least one piece is older than %s after \"%s\" when \"%s\" begins%s."
                .formatted(Math.round(share * 100), MinuteWords.minutes(greatest), from.title(), to.title(), often);
        return new Ageing(from.title(), to.title(), greatest, share, students[i] / (double) classes / script.students().length, age, sentence);
    }
}
