package benchful.backups.tables;

import static org.assertj.core.api.Assertions.assertThat;

import io.agroal.api.AgroalDataSource;
import java.lang.reflect.Proxy;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RestoreWatchTest {
    private final AtomicInteger asked = new AtomicInteger();
    private final RestoreWatch watch = new RestoreWatch(away());

    @Test
    void asksTheDatabaseOnceForManyChangesAndAgainWhenSomethingBeganOrEndedHere() {
        IntStream.range(0, 1000).forEach(i -> watch.isRestoring());
        assertThat(asked).hasValue(1);
        watch.forget();
        watch.isRestoring();
        assertThat(asked).hasValue(2);
    }

    @Test
    void asksAgainWhenTheAnswerIsOld() throws InterruptedException {
        watch.isRestoring();
        Thread.sleep(RestoreWatch.FRESH.toMillis());
        watch.isRestoring();
        assertThat(asked).hasValue(2);
    }

    @Test
    void letsChangesOnWhereTheDatabaseCanNotBeAsked() {
        assertThat(watch.isRestoring()).isFalse();
    }

    /** A database that is away, and counts who asks. */
    private AgroalDataSource away() {
        return (AgroalDataSource) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {AgroalDataSource.class}, (proxy, method, arguments) -> {
            asked.incrementAndGet();
            throw new SQLException("away");
        });
    }
}
