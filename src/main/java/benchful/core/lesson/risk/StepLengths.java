package benchful.core.lesson.risk;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.risk.Script.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How long each step takes the simulated classes as somebody notes it who writes down when each step ends: from the end of the last
 * step of the same students, breaks left out. Waits are no steps in this sense, nobody works at them. Cost as {@link ClassSimulation}.
 */
public final class StepLengths {
    private static final int CLASSES = 300;

    private final LessonRequest request;
    private final Script script;
    private final Replication played;
    private final List<Part> parts;

    public StepLengths(LessonRequest request, LessonPlan plan) {
        this.request = request;
        this.script = new ScriptWriter(request, plan).script();
        this.played = new Replication(script);
        StepsById steps = request.stepsById();
        this.parts = script.parts().stream().filter(part -> steps.get(part.step()).kind().needsClass()).toList();
    }

    /**
     * One step of one class.
     *
     * @param group 0 for the whole class, else the group from 1
     * @param idle  time before it in which those who do it wait [s]
     * @param work  time from its first begin, or the end before it, until the class moves on [s]; 0 where it ends before the others
     */
    public record Length(String step, int group, double idle, double work) {
    }

    /** What three hundred classes come to on average; of the work the geometric mean of those in which there is any. */
    public List<Length> usual() {
        double[] idle = new double[parts.size()];
        double[] work = new double[parts.size()];
        int[] worked = new int[parts.size()];
        for (int number = 0; number < CLASSES; number++) {
            List<Length> one = ofClass(number);
            for (int i = 0; i < one.size(); i++) {
                idle[i] += one.get(i).idle() / CLASSES;
                work[i] += one.get(i).work() > 0 ? Math.log(one.get(i).work()) : 0;
                worked[i] += one.get(i).work() > 0 ? 1 : 0;
            }
        }
        return IntStream.range(0, parts.size()).mapToObj(i -> new Length(parts.get(i).step(), parts.get(i).group(), idle[i],
                worked[i] == 0 ? 0 : Math.exp(work[i] / worked[i]))).toList();
    }

    /** What becomes of one class; the same number is always the same class. */
    public List<Length> ofClass(int number) {
        played.play(request.seed(), number);
        double[] ended = new double[request.groups()];
        List<Length> lengths = new ArrayList<>();
        for (Part part : parts) {
            double before = part.group() == 0 ? Arrays.stream(ended).max().orElseThrow() : ended[part.group() - 1];
            double begin = Math.max(before, script.clock().toWorking(played.start[part.index()]));
            double end = script.clock().toWorking(played.end[part.index()]);
            lengths.add(new Length(part.step(), part.group(), begin - before, Math.max(0, end - begin)));
            if (part.group() == 0) {
                Arrays.fill(ended, end);
            } else {
                ended[part.group() - 1] = end;
            }
        }
        return lengths;
    }
}
