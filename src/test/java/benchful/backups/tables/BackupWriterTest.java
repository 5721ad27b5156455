package benchful.backups.tables;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.Backups;
import benchful.backups.Restores;
import benchful.backups.Stored;
import benchful.backups.archive.Archive;
import benchful.backups.archive.Manifest;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What goes into a backup, and of which moment it is. */
@QuarkusTest
class BackupWriterTest {
    @TestHTTPResource
    URL address;

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @Inject
    Restores restores;

    @Inject
    AgroalDataSource database;

    @BeforeEach
    void fill() throws SQLException {
        stored.fill(address);
    }

    /** The tables that are not carried stand here by name: whoever adds one must decide to leave it out. */
    @Test
    void carriesEveryTable() throws SQLException {
        Kept kept = backups.press();
        try (Archive archive = Archive.open(backups.folder().path().resolve(kept.name()))) {
            archive.verify();
            assertThat(archive.manifest().tables()).extracting(Manifest.Part::table).containsExactlyInAnyOrderElementsOf(stored.texts("""
                    select relname from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p')
                        and relname not in ('flyway_schema_history', 'backup', 'backup_schedule', 'form_secret', 'sent_form')"""));
            assertThat(archive.manifest().migrations()).isEqualTo(stored.texts("select version from flyway_schema_history order by version"));
        }
    }

    /** Each writer stores a material and a supplier of one name in one transaction; a backup holds both or neither. */
    @Test
    void isOfOneMomentWhileOthersWrite() throws Exception {
        AtomicBoolean over = new AtomicBoolean();
        AtomicInteger written = new AtomicInteger();
        ExecutorService writers = Executors.newFixedThreadPool(3);
        List<Future<?>> work = new ArrayList<>();
        for (int w = 0; w < 3; w++) {
            int writer = w;
            work.add(writers.submit(() -> {
                for (int i = 0; !over.get() && i < 100_000; i++) {
                    writePair("writer %d %06d".formatted(writer, i));
                    written.incrementAndGet();
                }
                return null;
            }));
        }
        while (written.get() < 30) {
            Thread.sleep(5);
        }
        int before = written.get();
        String file = backups.press().name();
        int after = written.get();
        over.set(true);
        writers.shutdown();
        for (Future<?> f : work) {
            f.get();
        }
        assertThat(after).as("writes went on meanwhile").isGreaterThan(before);

        restores.restore(file, null);

        List<String> pairs = stored.texts("select name from supplier where name like 'writer%' order by 1");
        assertThat(pairs).hasSizeBetween(before, after + 3).isEqualTo(stored.texts("select name from material where name like 'writer%' order by 1"));
    }

    private void writePair(String name) throws SQLException {
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.execute("insert into material (version, name, unit, hazards, sample) values (0, '%s', 'pcs', '{}', false)".formatted(name));
            statement.execute("insert into supplier (version, name, currency, lead_days, sample) values (0, '%s', 'GBP', 1, false)".formatted(name));
            connection.commit();
        }
    }
}
