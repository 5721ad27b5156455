package benchful.core.lesson.time;

/**
 * Students who ask for help, as a queue with a finite source (M/M/c//N, "machine repair"): each of N students works for an
 * exponential time between calls, and c people each answer one call at a time in an exponential time.
 * Steady state: p(j+1)/p(j) = (N - j) x callRate / (min(j+1, c) x answerRate). Cost O(N).
 * Source: Gross and Harris, Fundamentals of Queueing Theory, finite-source queues (from memory).
 *
 * @param idle    probability that nobody asks
 * @param queue   mean number waiting, Lq
 * @param asking  mean number waiting or being helped, L
 * @param delay   mean wait before help begins, Wq [unit of 1/rate]
 * @param busy    mean share of time one helping person is busy
 */
public record HelpQueue(double idle, double queue, double asking, double delay, double busy) {

    /**
     * @param students   N, 1 or more
     * @param callRate   calls of one student per time of work between calls, above 0
     * @param answerRate calls one person answers per time, above 0
     * @param people     c, 1 or more
     */
    public static HelpQueue of(int students, double callRate, double answerRate, int people) {
        if (students < 1 || people < 1 || !(callRate > 0) || !(answerRate > 0)) {
            throw new IllegalArgumentException("A queue for help needs students, people who help, and rates above 0");
        }
        double[] p = stationary(students, callRate / answerRate, people);
        double queue = 0;
        double asking = 0;
        double helping = 0;
        for (int j = 0; j <= students; j++) {
            queue += Math.max(0, j - people) * p[j];
            asking += j * p[j];
            helping += Math.min(j, people) * p[j];
        }
        double calls = callRate * (students - asking);
        return new HelpQueue(p[0], queue, asking, queue / calls, helping / people);
    }

    private static double[] stationary(int students, double ratio, int people) {
        double[] logs = new double[students + 1];
        double top = 0;
        for (int j = 0; j < students; j++) {
            logs[j + 1] = logs[j] + Math.log((students - j) * ratio / Math.min(j + 1, people));
            top = Math.max(top, logs[j + 1]);
        }
        double sum = 0;
        for (int j = 0; j <= students; j++) {
            logs[j] = Math.exp(logs[j] - top);
            sum += logs[j];
        }
        for (int j = 0; j <= students; j++) {
            logs[j] /= sum;
        }
        return logs;
    }

    /** Mean time from call to end of help, W. */
    public double time(double answerRate) {
        return delay + 1 / answerRate;
    }
}
