package benchful.web.tasks;

import benchful.core.Progress;
import io.quarkus.qute.TemplateData;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * One piece of long work that goes on beside the pages. It is given up when it is recalled or when nobody has asked after it
 * for a while, as when the page was closed.
 *
 * @param <R> what it brings back
 */
@TemplateData
public final class BackgroundTask<R> implements Progress {
    /** A page that shows progress asks every second or two. */
    static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Object input;
    private final Duration patience;
    private final CompletableFuture<R> result = new CompletableFuture<>();
    private final AtomicLong asked = new AtomicLong(System.nanoTime());
    private volatile boolean recalled;
    private volatile int done;
    private volatile int all;
    private volatile String failure;
    private volatile R soFar;
    private volatile boolean enough;

    BackgroundTask(Object input, Duration patience) {
        this.input = input;
        this.patience = patience;
    }

    @Override
    public void tell(int partsDone, int partsInAll) {
        done = partsDone;
        all = partsInAll;
    }

    @Override
    public boolean isGivenUp() {
        return recalled || System.nanoTime() - asked.get() > patience.toNanos();
    }

    public int done() {
        return done;
    }

    /** How many parts there are in all, as far as is known now; 0 before the work has said. */
    public int all() {
        return all;
    }

    /** What it brought back; nothing while it is under way, after it was given up and where it failed. */
    public Optional<R> result() {
        return result(Duration.ZERO);
    }

    /** As {@link #result()}, after waiting for it so long; for work that is mostly done at once. */
    public Optional<R> result(Duration wait) {
        return Optional.ofNullable(result.copy().completeOnTimeout(null, wait.toMillis(), TimeUnit.MILLISECONDS).exceptionally(failed -> null).join());
    }

    /** What it would bring back if it ended now; for work that tells. */
    public Optional<R> soFar() {
        return Optional.ofNullable(soFar);
    }

    /** Told by the work. */
    public void has(R meanwhile) {
        soFar = meanwhile;
    }

    /** Asks the work to end with what it has. */
    public void isToEnd() {
        enough = true;
    }

    /** Asked by work that can end sooner with what it has. */
    public boolean isEnough() {
        return enough || isGivenUp();
    }

    /** Why it brings nothing back, in words for whoever waits; null where it may yet. */
    public String failure() {
        return failure;
    }

    boolean isFor(Object otherInput) {
        return input.equals(otherInput);
    }

    boolean isOver() {
        return result.isDone() || isGivenUp();
    }

    boolean isWorthKeeping() {
        return !result.isCompletedExceptionally() && (result.isDone() || !isGivenUp());
    }

    void askedAgain() {
        asked.set(System.nanoTime());
    }

    void recall() {
        recalled = true;
    }

    void bringsBack(R brought) {
        result.complete(brought);
    }

    void fails(Throwable why) {
        failure = words(why);
        result.completeExceptionally(why);
    }

    /** Nobody waits for it any more. */
    void abandon() {
        result.cancel(false);
    }

    private static String words(Throwable why) {
        if (why instanceof OutOfMemoryError) {
            return "The program ran out of memory. Try it in smaller parts, or start the program with more: java -Xmx2g, and the rest as before.";
        }
        if (why instanceof UncheckedIOException) {
            return why.getMessage() + " Is its disk full?";
        }
        return "Something went wrong in the program itself. Its log says what; nothing of yours was changed.";
    }
}
