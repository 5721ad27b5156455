package benchful.web.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class BackgroundTasksTest {
    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final BackgroundTasks tasks = new BackgroundTasks(waiting::add);

    @Test
    void bringsBackWhatTheWorkFoundAndKeepsItForTheSameInput() {
        BackgroundTask<String> first = tasks.send("a", 1, e -> "found");
        assertThat(first.result()).isEmpty();
        waiting.remove().run();
        assertThat(first.result()).contains("found");
        assertThat(tasks.<String>send("a", 1, e -> "again")).isSameAs(first);
        assertThat(waiting).isEmpty();
    }

    @Test
    void givesUpTheOldWhenTheInputChanges() {
        BackgroundTask<String> old = tasks.send("a", 1, e -> "old");
        BackgroundTask<String> fresh = tasks.send("a", 2, e -> "new");
        assertThat(old.isGivenUp()).isTrue();
        waiting.forEach(Runnable::run);
        assertThat(fresh.result()).contains("new");
        assertThat(old.result()).isEmpty();
        assertThat(old.failure()).as("given up is no failure").isNull();
    }

    @Test
    void saysHowFarItIs() {
        BackgroundTask<Integer> task = tasks.send("a", 1, e -> {
            e.tell(3, 10);
            return e.isGivenUp() ? 0 : 1;
        });
        assertThat(task.all()).isZero();
        waiting.remove().run();
        assertThat(task.done()).isEqualTo(3);
        assertThat(task.all()).isEqualTo(10);
    }

    @Test
    void tellsOfAFailureOnceAndIsSentAnewAfterThat() {
        BackgroundTask<String> failing = tasks.send("a", 1, e -> {
            throw new IllegalStateException("a detail for developers");
        });
        waiting.remove().run();
        assertThat(failing.result()).isEmpty();
        assertThat(failing.failure()).contains("Its log says what").doesNotContain("a detail for developers");
        assertThat(tasks.<String>send("a", 1, e -> "well")).isSameAs(failing);
        assertThat(waiting).isEmpty();
        assertThat(tasks.<String>send("a", 1, e -> "well")).isNotSameAs(failing);
        assertThat(waiting).hasSize(1);
    }

    @Test
    void saysWhatHelpsWhereMemoryOrDiskDidNotSuffice() {
        BackgroundTask<String> large = tasks.send("a", 1, e -> {
            throw new OutOfMemoryError();
        });
        BackgroundTask<String> unwritten = tasks.send("b", 1, e -> {
            throw new UncheckedIOException("A print-out can't be written to the temporary folder.", new IOException());
        });
        waiting.forEach(Runnable::run);
        assertThat(large.failure()).contains("smaller parts", "-Xmx2g");
        assertThat(unwritten.failure()).isEqualTo("A print-out can't be written to the temporary folder. Is its disk full?");
    }

    @Test
    void isGivenUpOnceItsInputIsNoLongerSo() {
        BackgroundTask<String> old = tasks.send("a", 1, e -> "old");
        tasks.keepOnlyFor("a", 1);
        assertThat(old.isGivenUp()).isFalse();
        tasks.keepOnlyFor("a", 2);
        assertThat(old.isGivenUp()).isTrue();
    }
}
