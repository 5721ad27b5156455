package benchful.backups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.backups.archive.Archive;
import benchful.backups.archive.BackupFault;
import benchful.backups.tables.AdvisoryLock;
import benchful.backups.tables.AdvisoryLock.Purpose;
import benchful.backups.tables.RestoreWatch;
import benchful.backups.tables.Restorer;
import benchful.web.Visitor;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Everything that is stored goes out and comes back equal, into an empty and into a filled instance. */
@QuarkusTest
class RestoresTest {
    @TestHTTPResource
    URL address;

    @Inject
    Stored stored;

    @Inject
    Backups backups;

    @Inject
    Restores restores;

    @Inject
    Restorer restorer;

    @Inject
    RestoreWatch watch;

    @Inject
    AgroalDataSource database;

    @BeforeEach
    void fill() throws SQLException {
        stored.fill(address);
    }

    @Test
    void putsEverythingBackIntoAnEmptyInstance() throws SQLException {
        Map<String, String> before = stored.everything();
        assertThat(before.values()).as("tables with rows of " + before).filteredOn(t -> !t.startsWith("0 rows")).hasSizeGreaterThanOrEqualTo(24);
        String file = backups.press().name();
        stored.nothing();

        restores.restore(file, null);

        assertThat(stored.everything()).isEqualTo(before);
    }

    @Test
    void replacesWhatIsThereAndCanBeUndone() throws SQLException {
        Map<String, String> before = stored.everything();
        String file = backups.press().name();
        stored.execute("update material set name = name || ' new'", "delete from review", "insert into stock_movement (material_id, kind, amount, happened_at) select id, 'COUNTED', 1.5, now() from material");
        Map<String, String> changed = stored.everything();

        restores.restore(file, null);
        assertThat(stored.everything()).isEqualTo(before);

        restores.restore(kept(), null);
        assertThat(stored.everything()).isEqualTo(changed);
    }

    @Test
    void turnsChangesAwayWhileAnyInstancePutsABackupBack() throws Exception {
        String file = backups.press().name();
        Visitor tutor = new Visitor(address);
        tutor.open("/venues/new").type("/name", "Boatshed loft");
        try (AdvisoryLock elsewhere = AdvisoryLock.take(database, Purpose.RESTORE).orElseThrow()) {
            Thread.sleep(RestoreWatch.FRESH.toMillis());
            tutor.press("Save");
            assertThat(tutor.status()).isEqualTo(503);
            assertThat(tutor.answer().header("Retry-After")).isEqualTo("30");
            assertThat(tutor.page().text()).contains("A backup is being put back").contains("what you sent was not saved");
            assertThatThrownBy(() -> restores.restore(file, null)).isInstanceOf(BackupFault.class).hasMessageStartingWith("A backup is being put back already.");
            assertThat(tutor.open("/venues").status()).isEqualTo(200);
        }
        Thread.sleep(RestoreWatch.FRESH.toMillis());
        assertThat(tutor.open("/venues/new").type("/name", "Boatshed loft").press("Save").status()).isEqualTo(200);
    }

    @Test
    void knowsAtOnceWhetherABackupIsPutBackHere() {
        AtomicBoolean known = new AtomicBoolean();
        try (Archive archive = Archive.open(backups.folder().path().resolve(backups.press().name()))) {
            assertThat(watch.isRestoring()).isFalse();
            restorer.restore(archive, () -> known.set(watch.isRestoring()));
        }
        assertThat(known).isTrue();
        assertThat(watch.isRestoring()).isFalse();
    }

    /** Each write that was acknowledged stands in what was kept before, or was made after and is there. */
    @Test
    void losesNoWriteThatIsMadeMeanwhile() throws Exception {
        String file = backups.press().name();
        AtomicBoolean over = new AtomicBoolean();
        List<String> acknowledged = Collections.synchronizedList(new ArrayList<>());
        ExecutorService writer = Executors.newSingleThreadExecutor();
        Future<?> work = writer.submit(() -> {
            for (int i = 0; !over.get() && i < 100_000; i++) {
                String name = "meanwhile %06d".formatted(i);
                stored.execute("insert into supplier (version, name, currency, lead_days, sample) values (0, '%s', 'GBP', 1, false)".formatted(name));
                acknowledged.add(name);
            }
            return null;
        });
        while (acknowledged.size() < 20) {
            Thread.sleep(5);
        }

        restores.restore(file, null);

        over.set(true);
        work.get();
        writer.shutdown();
        List<String> after = stored.texts("select name from supplier where name like 'meanwhile%'");
        restores.restore(kept(), null);
        List<String> found = new ArrayList<>(stored.texts("select name from supplier where name like 'meanwhile%'"));
        assertThat(found).hasSizeGreaterThanOrEqualTo(20);
        found.addAll(after);
        assertThat(found).containsExactlyInAnyOrderElementsOf(acknowledged);
    }

    private String kept() {
        return backups.folder().files().stream().map(BackupFolder.Kept::name).filter(n -> n.startsWith("benchful-before-restore")).findFirst().orElseThrow();
    }
}
