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
     * @param finished when each student has finished, from the same begin and in order, of what each does by herself; infinite where the
     *     class moves on before [s]
     * @param students who do it, and {@code needed} of them before the class moves on; 0 of what all do together
     */
    public record Length(String step, int group, double idle, double work, List<Double> finished, int students, int needed) {
        public Length {
            finished = List.copyOf(finished);
        }
    }

    /**
     * What three hundred classes come to on average; of the work the geometric mean of those in which there is any, of the times at which
     * students have finished as many as there are classes, evenly from all of them in order.
     */
    public List<Length> usual() {
        double[] idle = new double[parts.size()];
        double[] work = new double[parts.size()];
        int[] worked = new int[parts.size()];
        List<List<Double>> finished = parts.stream().<List<Double>>map(part -> new ArrayList<>()).toList();
        for (int number = 0; number < CLASSES; number++) {
            List<Length> one = ofClass(number);
            for (int i = 0; i < one.size(); i++) {
                idle[i] += one.get(i).idle() / CLASSES;
                work[i] += one.get(i).work() > 0 ? Math.log(one.get(i).work()) : 0;
                worked[i] += one.get(i).work() > 0 ? 1 : 0;
                finished.get(i).addAll(one.get(i).finished());
            }
        }
        return IntStream.range(0, parts.size()).mapToObj(i -> new Length(parts.get(i).step(), parts.get(i).group(), idle[i],
                worked[i] == 0 ? 0 : Math.exp(work[i] / worked[i]), thinned(finished.get(i)), parts.get(i).members(), parts.get(i).mustFinish())).toList();
    }

    /** The middle one of each {@code n} where there are {@code n} times as many as classes. */
    private static List<Double> thinned(List<Double> times) {
        List<Double> inOrder = times.stream().sorted().toList();
        return inOrder.isEmpty() ? inOrder : IntStream.range(0, CLASSES).mapToObj(i -> inOrder.get((int) ((i + 0.5) / CLASSES * inOrder.size()))).toList();
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
            lengths.add(new Length(part.step(), part.group(), begin - before, Math.max(0, end - begin), finished(part, begin), part.members(), part.mustFinish()));
            if (part.group() == 0) {
                Arrays.fill(ended, end);
            } else {
                ended[part.group() - 1] = end;
            }
        }
        return lengths;
    }

    private List<Double> finished(Part part, double begin) {
        if (part.mustFinish() == 0) {
            return List.of();
        }
        double[] times = IntStream.range(0, script.students().length).filter(student -> script.takesPart(student, part))
                .mapToDouble(student -> script.clock().toWorking(played.done[part.index()][student]) - begin).sorted().toArray();
        int finished = times.length - (int) Math.round(played.unfinished[part.index()] * times.length);
        Arrays.fill(times, finished, times.length, Double.POSITIVE_INFINITY);
        return Arrays.stream(times).boxed().toList();
    }
}
