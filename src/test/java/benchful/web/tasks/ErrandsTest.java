package benchful.web.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class ErrandsTest {
    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final Errands errands = new Errands(waiting::add);

    @Test
    void bringsBackWhatTheWorkFoundAndKeepsItForTheSameInput() {
        Errand<String> first = errands.send("a", 1, e -> "found");
        assertThat(first.result()).isEmpty();
        waiting.remove().run();
        assertThat(first.result()).contains("found");
        assertThat(errands.<String>send("a", 1, e -> "again")).isSameAs(first);
        assertThat(waiting).isEmpty();
    }

    @Test
    void givesUpTheOldWhenTheInputChanges() {
        Errand<String> old = errands.send("a", 1, e -> "old");
        Errand<String> fresh = errands.send("a", 2, e -> "new");
        assertThat(old.isGivenUp()).isTrue();
        waiting.forEach(Runnable::run);
        assertThat(fresh.result()).contains("new");
        assertThat(old.result()).isEmpty();
        assertThat(old.failure()).as("given up is no failure").isNull();
    }

    @Test
    void saysHowFarItIs() {
        Errand<Integer> errand = errands.send("a", 1, e -> {
            e.tell(3, 10);
            return e.isGivenUp() ? 0 : 1;
        });
        assertThat(errand.all()).isZero();
        waiting.remove().run();
        assertThat(errand.done()).isEqualTo(3);
        assertThat(errand.all()).isEqualTo(10);
    }

    @Test
    void tellsOfAFailureOnceAndIsSentAnewAfterThat() {
        Errand<String> failing = errands.send("a", 1, e -> {
            throw new IllegalStateException("a detail for developers");
        });
        waiting.remove().run();
        assertThat(failing.result()).isEmpty();
        assertThat(failing.failure()).contains("Its log says what").doesNotContain("a detail for developers");
        assertThat(errands.<String>send("a", 1, e -> "well")).isSameAs(failing);
        assertThat(waiting).isEmpty();
        assertThat(errands.<String>send("a", 1, e -> "well")).isNotSameAs(failing);
        assertThat(waiting).hasSize(1);
    }

    @Test
    void saysWhatHelpsWhereMemoryOrDiskDidNotSuffice() {
        Errand<String> large = errands.send("a", 1, e -> {
            throw new OutOfMemoryError();
        });
        Errand<String> unwritten = errands.send("b", 1, e -> {
            throw new UncheckedIOException("A print-out can't be written to the temporary folder.", new IOException());
        });
        waiting.forEach(Runnable::run);
        assertThat(large.failure()).contains("smaller parts", "-Xmx2g");
        assertThat(unwritten.failure()).isEqualTo("A print-out can't be written to the temporary folder. Is its disk full?");
    }

    @Test
    void isGivenUpOnceItsInputIsNoLongerSo() {
        Errand<String> old = errands.send("a", 1, e -> "old");
        errands.keepOnlyFor("a", 1);
        assertThat(old.isGivenUp()).isFalse();
        errands.keepOnlyFor("a", 2);
        assertThat(old.isGivenUp()).isTrue();
    }
}
