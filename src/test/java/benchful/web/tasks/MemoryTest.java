package benchful.web.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class MemoryTest {
    private static final int MOST_WAITING = 3;
    private final ExecutorService askers = Executors.newCachedThreadPool();
    private final AtomicInteger worked = new AtomicInteger();
    private final Workroom room = new Workroom(2, MOST_WAITING);
    private final Memory memory = new Memory(room, 100);

    @AfterEach
    void stop() {
        askers.shutdownNow();
    }

    private String ask(String question) {
        return memory.of(question, answer -> 10, () -> question + worked.incrementAndGet());
    }

    @Test
    void worksOutTheSameQuestionOnceAndAnotherAnew() {
        assertThat(List.of(ask("a"), ask("a"), ask("b"), ask("a"))).containsExactly("a1", "a1", "b2", "a1");
    }

    @Test
    void forgetsWhatIsMoreThanItMayHold() throws InterruptedException {
        IntStream.range(0, 200).forEach(i -> ask("question " + i));
        TimeUnit.MILLISECONDS.sleep(500);
        assertThat(IntStream.range(0, 200).filter(i -> memory.known("question " + i).isPresent()).count()).isBetween(1L, 10L);
    }

    @Test
    void countsWhatTheQuestionsHold() throws InterruptedException {
        String pasted = "x".repeat(5_000);
        IntStream.range(0, 50).forEach(i -> memory.of(pasted + i, answer -> 0, () -> "short"));
        TimeUnit.MILLISECONDS.sleep(500);
        assertThat(IntStream.range(0, 50).filter(i -> memory.known(pasted + i).isPresent()).count()).isBetween(1L, 10L);
    }

    /** Those who ask before it is known to be under way wait for a place, so there is room for all of them. */
    @Test
    void doesTheWorkOnceForAllWhoAskAtTheSameTime() {
        Memory roomy = new Memory(new Workroom(2, 20), 100);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        Supplier<String> work = () -> {
            begun.countDown();
            await(go);
            return "done " + worked.incrementAndGet();
        };
        List<CompletableFuture<String>> all = IntStream.range(0, 20).mapToObj(i -> CompletableFuture.supplyAsync(() -> roomy.of("same", s -> 1, work), askers)).toList();
        await(begun);
        go.countDown();
        assertThat(all).extracting(CompletableFuture::join).containsOnly("done 1");
    }

    @Test
    void tellsOfAFailureAndTriesAnew() {
        assertThatThrownBy(() -> memory.of("bad", s -> 1, () -> {
            throw new IllegalStateException("broken");
        })).hasMessage("broken");
        assertThat(ask("bad")).isEqualTo("bad1");
    }

    @Test
    void givesWorkUpOnceAllWhoWaitedAreGone() {
        AtomicBoolean firstGone = new AtomicBoolean();
        AtomicBoolean secondGone = new AtomicBoolean();
        CountDownLatch begun = new CountDownLatch(1);
        Supplier<String> endless = () -> {
            begun.countDown();
            while (true) {
                Asker.check();
                sleep();
            }
        };
        CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> Asker.during(firstGone::get, () -> memory.of("long", s -> 1, endless)), askers);
        await(begun);
        CompletableFuture<String> second = CompletableFuture.supplyAsync(() -> Asker.during(secondGone::get, () -> memory.of("long", s -> 1, endless)), askers);
        sleep();
        firstGone.set(true);
        sleep();
        assertThat(first).as("goes on for the second").isNotDone();
        secondGone.set(true);
        assertThatThrownBy(first::join).isInstanceOfAny(CompletionException.class, CancellationException.class).hasRootCauseInstanceOf(CancellationException.class);
        assertThatThrownBy(second::join).hasRootCauseInstanceOf(CancellationException.class);
        assertThat(ask("long")).as("is begun anew for whoever asks later").isEqualTo("long1");
    }

    @Test
    void turnsAwayWhoeverComesWhenTooManyWait() {
        CountDownLatch begun = new CountDownLatch(2);
        CountDownLatch go = new CountDownLatch(1);
        List<CompletableFuture<String>> served = IntStream.range(0, 5).mapToObj(i -> CompletableFuture.supplyAsync(() -> memory.of("work " + i, s -> 1, () -> {
            begun.countDown();
            await(go);
            return "done";
        }), askers)).toList();
        await(begun);
        while (room.waiting() < MOST_WAITING) {
            sleep();
        }
        assertThatThrownBy(() -> ask("one more")).isInstanceOf(Busy.class);
        go.countDown();
        assertThat(served).extracting(CompletableFuture::join).containsOnly("done");
        assertThat(ask("one more")).isEqualTo("one more1");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await(30, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void sleep() {
        try {
            TimeUnit.MILLISECONDS.sleep(50);
        } catch (InterruptedException e) {
            throw new CancellationException("stopped");
        }
    }
}
