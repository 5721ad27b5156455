package benchful.web.tasks;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.eclipse.microprofile.context.ManagedExecutor;
import org.eclipse.microprofile.context.ThreadContext;
import org.jboss.logging.Logger;

/**
 * Long work that pages send off and ask after: one errand for each purpose, such as the suggestions for class 7. Sent again
 * with the same input it is the one under way, or the finished one; with another input the old one is given up.
 */
@ApplicationScoped
public class Errands {
    private static final int MOST_KEPT = 40;
    private static final int AT_ONCE = 2;

    private static final Logger LOG = Logger.getLogger(Errands.class);

    private final Executor executor;
    private final Map<String, Errand<?>> sent = new LinkedHashMap<>();

    /** As many at once as leave room for pages; without the transaction of the page that sends them. */
    @Inject
    Errands() {
        this(ManagedExecutor.builder().maxAsync(AT_ONCE).propagated().cleared(ThreadContext.ALL_REMAINING).build());
    }

    /** @param executor where the work is done */
    public Errands(Executor executor) {
        this.executor = executor;
    }

    /**
     * An errand that failed is given once more, so that its sender can be told; sent after that, it is tried anew.
     *
     * @param purpose what it is for; the type of result belongs to it
     * @param input   all that decides the result, compared with {@code equals}
     * @param work    tells the errand how far it is, and asks it whether to give up; runs without a transaction
     */
    @SuppressWarnings("unchecked")
    public synchronized <R> Errand<R> send(String purpose, Object input, Function<Errand<R>, R> work) {
        Errand<R> earlier = (Errand<R>) sent.remove(purpose);
        boolean same = earlier != null && earlier.isFor(input);
        if (same && earlier.failure() != null) {
            return earlier;
        }
        if (same && earlier.isWorthKeeping()) {
            earlier.askedAgain();
            sent.put(purpose, earlier);
            return earlier;
        }
        recall(earlier);
        forgetOldest();
        Errand<R> errand = new Errand<>(input);
        sent.put(purpose, errand);
        executor.execute(() -> run(errand, work));
        return errand;
    }

    /** Gives up what is under way for the purpose with any other input. */
    public synchronized void keepOnlyFor(String purpose, Object input) {
        Errand<?> errand = sent.get(purpose);
        if (errand != null && !errand.isFor(input)) {
            recall(sent.remove(purpose));
        }
    }

    @PreDestroy
    synchronized void stop() {
        sent.values().forEach(Errand::recall);
        if (executor instanceof ManagedExecutor own) {
            own.shutdownNow();
        }
    }

    private static void recall(Errand<?> errand) {
        if (errand != null) {
            errand.recall();
        }
    }

    private void forgetOldest() {
        Iterator<Errand<?>> oldest = sent.values().iterator();
        while (sent.size() >= MOST_KEPT && oldest.hasNext()) {
            Errand<?> errand = oldest.next();
            if (errand.isOver()) {
                oldest.remove();
            }
        }
    }

    private static <R> void run(Errand<R> errand, Function<Errand<R>, R> work) {
        try {
            R brought = work.apply(errand);
            if (errand.isGivenUp()) {
                errand.abandon();
            } else {
                errand.bringsBack(brought);
            }
        } catch (RuntimeException | Error failure) {
            errand.fails(failure);
            LOG.warn("Long work failed", failure);
        }
    }
}
