package benchful.web.tasks;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.eclipse.microprofile.context.ManagedExecutor;
import org.eclipse.microprofile.context.ThreadContext;
import org.jboss.logging.Logger;

/**
 * Long work that pages send off and ask after: one task for each purpose, such as the suggestions for class 7. Sent again
 * with the same input it is the one under way, or the finished one; with another input the old one is given up.
 */
@ApplicationScoped
public class BackgroundTasks {
    private static final int MOST_KEPT = 40;
    private static final int AT_ONCE = 2;

    private static final Logger LOG = Logger.getLogger(BackgroundTasks.class);

    private final Executor executor;
    private final Map<String, BackgroundTask<?>> sent = new LinkedHashMap<>();

    /** As many at once as leave room for pages; without the transaction of the page that sends them. */
    @Inject
    BackgroundTasks() {
        this(executor(AT_ONCE));
    }

    /** Tasks that wait for each other, beside all others; whoever asks for them stops them. */
    public static BackgroundTasks oneByOne() {
        return new BackgroundTasks(executor(1));
    }

    private static ManagedExecutor executor(int atOnce) {
        return ManagedExecutor.builder().maxAsync(atOnce).propagated().cleared(ThreadContext.ALL_REMAINING).build();
    }

    /** @param executor where the work is done */
    public BackgroundTasks(Executor executor) {
        this.executor = executor;
    }

    /**
     * A task that failed is given once more, so that its sender can be told; sent after that, it is tried anew.
     *
     * @param purpose what it is for; the type of result belongs to it
     * @param input   all that decides the result, compared with {@code equals}
     * @param work    tells the task how far it is, and asks it whether to give up; runs without a transaction
     */
    public <R> BackgroundTask<R> send(String purpose, Object input, Function<BackgroundTask<R>, R> work) {
        return send(purpose, input, BackgroundTask.PATIENCE, work);
    }

    /** @param patience how long it goes on though nobody asks after it */
    @SuppressWarnings("unchecked")
    public synchronized <R> BackgroundTask<R> send(String purpose, Object input, Duration patience, Function<BackgroundTask<R>, R> work) {
        BackgroundTask<R> earlier = (BackgroundTask<R>) sent.remove(purpose);
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
        BackgroundTask<R> task = new BackgroundTask<>(input, patience);
        sent.put(purpose, task);
        executor.execute(() -> run(task, work));
        return task;
    }

    /** What was sent last for the purpose with this input, under way or finished; nobody is said to ask after it. The type of result belongs to the purpose. */
    @SuppressWarnings("unchecked")
    public synchronized <R> Optional<BackgroundTask<R>> sent(String purpose, Object input) {
        return Optional.ofNullable((BackgroundTask<R>) sent.get(purpose)).filter(task -> task.isFor(input));
    }

    /** Gives up what is under way for the purpose with any other input. */
    public synchronized void keepOnlyFor(String purpose, Object input) {
        BackgroundTask<?> task = sent.get(purpose);
        if (task != null && !task.isFor(input)) {
            recall(sent.remove(purpose));
        }
    }

    @PreDestroy
    public synchronized void stop() {
        sent.values().forEach(BackgroundTask::recall);
        if (executor instanceof ManagedExecutor own) {
            own.shutdownNow();
        }
    }

    private static void recall(BackgroundTask<?> task) {
        if (task != null) {
            task.recall();
        }
    }

    private void forgetOldest() {
        Iterator<BackgroundTask<?>> oldest = sent.values().iterator();
        while (sent.size() >= MOST_KEPT && oldest.hasNext()) {
            BackgroundTask<?> task = oldest.next();
            if (task.isOver()) {
                oldest.remove();
            }
        }
    }

    private static <R> void run(BackgroundTask<R> task, Function<BackgroundTask<R>, R> work) {
        try {
            R brought = work.apply(task);
            if (task.isGivenUp()) {
                task.abandon();
            } else {
                task.bringsBack(brought);
            }
        } catch (RuntimeException | Error failure) {
            task.fails(failure);
            LOG.warn("Long work failed", failure);
        }
    }
}
