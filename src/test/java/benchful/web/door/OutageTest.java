package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutageTest {
    @ParameterizedTest
    @CsvSource({"53100, DISK_FULL", "08006, DATABASE_AWAY", "57P01, DATABASE_AWAY", "57P03, DATABASE_AWAY", "53300, BUSY"})
    void isToldByTheDatabasesCode(String state, Outage outage) {
        assertThat(Outage.of(new IllegalStateException(new SQLException("anything", state)))).contains(outage);
    }

    @Test
    void isToldByTheDiskAndByThePoolOfConnections() {
        assertThat(Outage.of(new UncheckedIOException(new IOException("No space left on device")))).contains(Outage.DISK_FULL);
        assertThat(Outage.of(new RuntimeException(new SQLException("Sorry, acquisition timeout!")))).contains(Outage.BUSY);
    }

    @Test
    void isFoundAmongWhatWasPutAsideAndEndsWhereCausesGoRound() {
        Exception one = new IllegalStateException("one");
        Exception two = new IllegalStateException("two", one);
        one.addSuppressed(two);
        assertThat(Outage.of(two)).isEmpty();
        two.addSuppressed(new SQLException("anything", "08001"));
        assertThat(Outage.of(one)).contains(Outage.DATABASE_AWAY);
    }

    @Test
    void isNoneWhereTheProgramIsAtFault() {
        assertThat(Outage.of(new NullPointerException())).isEqualTo(Optional.empty());
        assertThat(Outage.of(new SQLException("a name that is taken", "23505"))).isEmpty();
    }
}
