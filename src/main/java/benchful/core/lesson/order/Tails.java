package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;

/** The longest chain of work and least gaps that hangs on the start of each activity [grains]. */
final class Tails {

    private final Model model;

    Tails(Model model) {
        this.model = model;
    }

    /** Relaxed until nothing changes; ends because circles longer than zero were refused before. Home waits hang on nothing. */
    long[] tails() {
        long[] tail = new long[model.size()];
        for (int i = 0; i < tail.length; i++) {
            tail[i] = model.activity(i).atHome() ? 0 : model.activity(i).work();
        }
        boolean changed = true;
        for (int round = 0; changed && round <= tail.length; round++) {
            changed = false;
            for (Gap gap : model.gaps()) {
                changed |= gap.hasLeast() && lengthen(tail, gap);
            }
        }
        return tail;
    }

    private boolean lengthen(long[] tail, Gap gap) {
        if (model.activity(gap.to()).atHome() && tail[gap.to()] == 0) {
            return false;
        }
        long chain = model.activity(gap.from()).work() + gap.least() + tail[gap.to()];
        boolean longer = chain > tail[gap.from()];
        tail[gap.from()] = Math.max(chain, tail[gap.from()]);
        return longer;
    }
}
