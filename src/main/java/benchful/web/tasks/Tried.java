package benchful.web.tasks;

import benchful.web.Trouble;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.WebApplicationException;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What became of one of several things that are worked out beside each other: each by itself, so that one that fails is named
 * and takes no other with it.
 */
public sealed interface Tried<T> {
    record Worked<T>(T value) implements Tried<T> {}

    record Failed<T>(Trouble trouble) implements Tried<T> {}

    /**
     * Tries it. What concerns the whole request passes through: a database that does not answer, a program that is full, a client that has gone.
     *
     * @param trouble words what it failed of
     */
    static <T> Tried<T> of(Supplier<T> work, Function<Throwable, Trouble> trouble) {
        try {
            return new Worked<>(work.get());
        } catch (WebApplicationException | PersistenceException | Busy | CancellationException wholeRequest) {
            throw wholeRequest;
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError failure) {
            return new Failed<>(trouble.apply(failure));
        }
    }

    static <T> List<T> worked(Collection<Tried<T>> all) {
        return all.stream().filter(t -> t instanceof Worked<T>).map(t -> ((Worked<T>) t).value()).toList();
    }

    static <T> List<Trouble> troubles(Collection<Tried<T>> all) {
        return all.stream().filter(t -> t instanceof Failed<T>).map(t -> ((Failed<T>) t).trouble()).toList();
    }
}
