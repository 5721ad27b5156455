package benchful.web.tasks;

import benchful.web.Writing;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * What was worked out lately, by all that it was worked out from: the same question is answered at once, on whatever page it is
 * asked. Several who ask the same at the same time wait for one piece of work, which goes on as long as one of them waits.
 * The memory is bounded by what it holds; what was not asked for longest goes first.
 */
@ApplicationScoped
public class Memory {
    /** A part of a plan, such as a block or a material, with its reasons. */
    private static final int PART_BYTES = 1_000;
    private static final int SHARE_OF_HEAP = 8;
    private static final long LOOK_MILLIS = 200;

    private final Workroom room;
    private final Cache<Object, Kept> kept;
    private final ConcurrentMap<Object, Task<?>> underway = new ConcurrentHashMap<>();

    private record Kept(Object value, int parts) {}

    /** Answers may hold sentences, so each belongs to the writing in which it was asked for. */
    private record Asked(Object question, Writing writing) {}

    @Inject
    Memory(Workroom room) {
        this(room, Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP / PART_BYTES);
    }

    /** @param mostParts that are held in all */
    public Memory(Workroom room, long mostParts) {
        this.room = room;
        this.kept = Caffeine.newBuilder().maximumWeight(mostParts).weigher((Object question, Kept k) -> k.parts()).build();
    }

    /** One piece of work, and all who wait for it. */
    private static final class Task<V> {
        private final CompletableFuture<V> result = new CompletableFuture<>();
        private final List<BooleanSupplier> askers = new CopyOnWriteArrayList<>();

        Task(BooleanSupplier asker) {
            askers.add(asker);
        }

        boolean isGivenUp() {
            return askers.stream().allMatch(BooleanSupplier::getAsBoolean);
        }
    }

    /**
     * The remembered answer, or the work's.
     *
     * @param question all that decides the answer, and what kind it is; compared with {@code equals}
     * @param parts    how much the answer holds, in parts of about a kilobyte
     * @param work     pure computation: it must not wait for the database
     * @throws Busy where the program has too much to do
     * @throws CancellationException where nobody waits any more
     */
    public <V> V of(Object question, ToIntFunction<V> parts, Supplier<V> work) {
        return answer(new Asked(question, Writing.current()), parts, work);
    }

    private <V> V answer(Asked question, ToIntFunction<V> parts, Supplier<V> work) {
        while (true) {
            Optional<V> known = kept(question);
            if (known.isPresent()) {
                return known.get();
            }
            Task<?> task = underway.get(question);
            Optional<V> answer = task == null ? room.work(() -> worked(question, parts, work)) : awaited(task);
            if (answer.isPresent()) {
                return answer.get();
            }
        }
    }

    /** The remembered answer; nothing where it has to be worked out. */
    public <V> Optional<V> known(Object question) {
        return kept(new Asked(question, Writing.current()));
    }

    @SuppressWarnings("unchecked")
    private <V> Optional<V> kept(Asked question) {
        return Optional.ofNullable(kept.getIfPresent(question)).map(k -> (V) k.value());
    }

    /** Nothing where somebody else was quicker to begin. */
    private <V> Optional<V> worked(Asked question, ToIntFunction<V> parts, Supplier<V> work) {
        Task<V> own = new Task<>(Asker.question());
        Task<?> other = underway.putIfAbsent(question, own);
        if (other != null) {
            return Optional.empty();
        }
        try {
            V value = Asker.during(own::isGivenUp, work);
            kept.put(question, new Kept(value, Math.max(1, parts.applyAsInt(value) + parts(question))));
            own.result.complete(value);
            return Optional.of(value);
        } catch (RuntimeException | Error failure) {
            own.result.completeExceptionally(failure);
            throw failure;
        } finally {
            underway.remove(question, own);
        }
    }

    /** A question holds its own copy of all that was written, pasted pages of text included: as many parts as it takes to write it out. */
    private static int parts(Object question) {
        return question.toString().length() * Character.BYTES / PART_BYTES;
    }

    /** Nothing where the work was given up meanwhile, so that it must be begun anew. */
    @SuppressWarnings("unchecked")
    private static <V> Optional<V> awaited(Task<?> task) {
        BooleanSupplier asker = Asker.question();
        task.askers.add(asker);
        while (true) {
            try {
                return Optional.of((V) task.result.get(LOOK_MILLIS, TimeUnit.MILLISECONDS));
            } catch (TimeoutException stillUnderway) {
                Asker.check();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException("The program stops.");
            } catch (ExecutionException e) {
                return again(e.getCause());
            }
        }
    }

    private static <V> Optional<V> again(Throwable failure) {
        if (failure instanceof CancellationException || failure instanceof Busy) {
            return Optional.empty();
        }
        if (failure instanceof Error error) {
            throw error;
        }
        throw failure instanceof RuntimeException same ? same : new CompletionException(failure);
    }
}
