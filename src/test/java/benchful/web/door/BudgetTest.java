package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private final Budget budget = new Budget();

    @Test
    void admitsSoMuchAtOnceOfOneClientAndMoreWhenSomeIsFinished() {
        begin("192.0.2.1", Budget.OF_ONE);
        Refusal refusal = budget.begin("192.0.2.1").orElseThrow();
        assertThat(refusal.status()).isEqualTo(429);
        assertThat(refusal.detail()).isEqualTo("8 pieces of work that you asked for are still under way. Wait until one is finished, and ask again in 5 seconds.");
        assertThat(refusal.retryAfter()).isEqualTo(5);
        assertThat(budget.begin("192.0.2.2")).as("another client").isEmpty();
        budget.end("192.0.2.1");
        assertThat(budget.begin("192.0.2.1")).isEmpty();
    }

    @Test
    void admitsSoMuchAtOnceOfAllTogether() {
        IntStream.range(0, Budget.OF_ALL / Budget.OF_ONE).forEach(client -> begin("192.0.2." + client, Budget.OF_ONE));
        assertThat(budget.begin("192.0.2.99").orElseThrow().status()).isEqualTo(503);
        budget.end("192.0.2.0");
        assertThat(budget.begin("192.0.2.99")).isEmpty();
    }

    @Test
    void remembersNoClientWhoseWorkIsFinished() {
        begin("192.0.2.1", 3);
        IntStream.range(0, 3).forEach(i -> budget.end("192.0.2.1"));
        assertThat(budget.clients()).isZero();
    }

    private void begin(String client, int times) {
        IntStream.range(0, times).forEach(i -> assertThat(budget.begin(client)).isEmpty());
    }
}
