package benchful.web.tasks;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Where things are worked out: as many at once as there are processors, while a few wait for their turn. More than that are
 * turned away at once, so that those who wait are served. No work in here may wait for the database.
 */
@ApplicationScoped
public class Workroom {
    private static final int MOST_WAITING = 60;
    private static final long PATIENCE_SECONDS = 20;
    private static final long LOOK_MILLIS = 250;

    private final Semaphore places;
    private final int mostWaiting;
    private final AtomicInteger waiting = new AtomicInteger();
    private final ThreadLocal<Boolean> inside = ThreadLocal.withInitial(() -> false);

    @Inject
    Workroom() {
        this(Math.max(2, Runtime.getRuntime().availableProcessors()), MOST_WAITING);
    }

    /** @param mostWaiting for their turn, beside those at work */
    public Workroom(int places, int mostWaiting) {
        this.places = new Semaphore(places, true);
        this.mostWaiting = mostWaiting;
    }

    /**
     * Works it out as soon as there is a place; within other work at once.
     *
     * @throws Busy where too many wait, or the turn does not come in time
     */
    public <T> T work(Supplier<T> work) {
        if (inside.get()) {
            return work.get();
        }
        enter();
        inside.set(true);
        try {
            return work.get();
        } finally {
            inside.set(false);
            places.release();
        }
    }

    /** Those who wait for their turn now. */
    int waiting() {
        return waiting.get();
    }

    private void enter() {
        if (places.tryAcquire()) {
            return;
        }
        try {
            if (waiting.incrementAndGet() > mostWaiting || !turn()) {
                throw new Busy();
            }
        } finally {
            waiting.decrementAndGet();
        }
    }

    private boolean turn() {
        try {
            for (long waited = 0; waited < PATIENCE_SECONDS * 1000; waited += LOOK_MILLIS) {
                if (places.tryAcquire(LOOK_MILLIS, TimeUnit.MILLISECONDS)) {
                    return true;
                }
                Asker.check();
            }
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
