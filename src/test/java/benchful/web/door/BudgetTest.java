package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private static final Optional<String> PAGE = Optional.empty();

    private final Budget budget = new Budget(1, Duration.ofMinutes(1));

    @Test
    void admitsSoMuchAtOnceOfOneProgramAndMoreWhenSomeIsFinished() {
        begin(program(1), Budget.OF_PROGRAM);
        Refusal refusal = budget.begin(program(1)).orElseThrow();
        assertThat(refusal.status()).isEqualTo(429);
        assertThat(refusal.detail()).isEqualTo("8 pieces of work that you asked for are still under way. Wait until one is finished, and ask again in 5 seconds.");
        assertThat(refusal.retryAfter()).isEqualTo(5);
        assertThat(budget.begin(program(2))).as("another program").isEmpty();
        budget.end(program(1));
        assertThat(budget.begin(program(1))).isEmpty();
    }

    @Test
    void countsNoPageByItsAddress() {
        begin(program(1), Budget.OF_PROGRAM);
        begin(PAGE, Budget.OF_ALL - Budget.OF_PROGRAM);
    }

    @Test
    void letsWhoComesWhenAllPlacesAreTakenWaitForATurn() throws Exception {
        begin(PAGE, Budget.OF_ALL);
        CompletableFuture<Optional<Refusal>> next = CompletableFuture.supplyAsync(() -> budget.begin(PAGE));
        budget.end(PAGE);
        assertThat(next.get(1, TimeUnit.MINUTES)).isEmpty();
    }

    @Test
    void turnsAwayWhoeverWaitsTooLongOrComesWhenTooManyWait() {
        Budget impatient = new Budget(1, Duration.ofMillis(1));
        Budget full = new Budget(0, Duration.ofMinutes(1));
        IntStream.range(0, Budget.OF_ALL).forEach(i -> assertThat(impatient.begin(PAGE)).isEmpty());
        IntStream.range(0, Budget.OF_ALL).forEach(i -> assertThat(full.begin(PAGE)).isEmpty());
        assertThat(impatient.begin(PAGE).orElseThrow().status()).isEqualTo(503);
        assertThat(full.begin(program(1)).orElseThrow().status()).isEqualTo(503);
        assertThat(full.programs()).as("refused, so not under way").isZero();
        full.end(PAGE);
        assertThat(full.begin(PAGE)).isEmpty();
    }

    @Test
    void remembersNoProgramWhoseWorkIsFinished() {
        begin(program(1), 3);
        IntStream.range(0, 3).forEach(i -> budget.end(program(1)));
        assertThat(budget.programs()).isZero();
    }

    private void begin(Optional<String> program, int times) {
        IntStream.range(0, times).forEach(i -> assertThat(budget.begin(program)).isEmpty());
    }

    private static Optional<String> program(int number) {
        return Optional.of("192.0.2." + number);
    }
}
