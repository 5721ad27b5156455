package benchful.core.lesson.risk;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.time.Pace;
import java.util.Arrays;

/**
 * Calls for help at a make step, as they are played: where a student is expected to call more than {@value #MOST} times, calls are
 * taken together, so many at once that those remain. They take as much help in all.
 *
 * @param rate   calls per second of work between calls, 0 for none
 * @param answer mean length of a call [s]
 * @param each   calls expected of the student who has most to do
 */
public record Calls(double rate, double answer, double each) {
    private static final int MOST = 100;

    /** @param students how many there are, whose pieces may differ */
    static Calls of(Step.Make make, int students) {
        if (make.help().isNone()) {
            return new Calls(0, 0, 0);
        }
        double rate = make.help().callsPerStudentHour() / 3600;
        double expected = rate * Pace.of(make.time()).mean() * Arrays.stream(make.time().scales(students)).max().orElse(1);
        double together = Math.max(1, expected / MOST);
        return new Calls(rate / together, make.help().minutesPerCall() * 60 * together, expected / together);
    }

    /** What playing one class of a request costs, in students x steps: as many of its blocks for each student, and each call beyond one a step. */
    public static double cost(LessonRequest request, int blocks) {
        int students = request.headcount();
        double more = request.steps().stream().mapToDouble(step -> step instanceof Step.Make make ? Math.max(0, of(make, students).each() - 1) : 0).sum();
        return students * (Math.max(1, blocks) + more);
    }
}
