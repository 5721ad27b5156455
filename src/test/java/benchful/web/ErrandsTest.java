package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletionException;
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
        assertThatThrownBy(old::result).isInstanceOf(java.util.concurrent.CancellationException.class);
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
    void isSentAnewAfterAFailure() {
        Errand<String> failing = errands.send("a", 1, e -> {
            throw new IllegalStateException("no paper");
        });
        waiting.remove().run();
        assertThatThrownBy(failing::result).isInstanceOf(CompletionException.class);
        assertThat(errands.<String>send("a", 1, e -> "well")).isNotSameAs(failing);
        assertThat(waiting).hasSize(1);
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
