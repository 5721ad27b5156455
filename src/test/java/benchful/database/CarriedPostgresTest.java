package benchful.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Starts the real server in a folder of its own and treats it badly. The tests share the folder, as the starts of one tutor do. */
class CarriedPostgresTest {
    // How long the system may take to forget a process that has ended.
    private static final Duration GOING = Duration.ofSeconds(10);

    @TempDir
    static Path home;

    private static Path folder;

    private CarriedPostgres postgres;

    @BeforeAll
    static void chooseAFolderWithASpace() {
        folder = home.resolve("bench data");
    }

    @BeforeEach
    void startWithAnEmptyBench() throws SQLException {
        postgres = CarriedPostgres.start(settings());
        execute("drop table if exists bench");
        execute("create table bench (tool text)");
    }

    @AfterEach
    void stop() throws IOException {
        postgres.close();
    }

    @Test
    void keepsDataOverARestart() throws Exception {
        execute("insert into bench values ('mandrel')");
        postgres.close();

        postgres = CarriedPostgres.start(settings());

        assertThat(tools()).containsExactly("mandrel");
    }

    @Test
    void startsAgainOnTheSamePortAfterTheServerIsKilled() throws Exception {
        execute("insert into bench values ('anvil')");
        String url = postgres.url();

        ProcessHandle killed = server();

        killed.destroyForcibly();

        assertThat(toolsWhenBack()).containsExactly("anvil");
        assertThat(server().pid()).isNotEqualTo(killed.pid());
        assertThat(postgres.url()).isEqualTo(url);
    }

    @Test
    void stopsTheServerWithTheProgram() throws Exception {
        ProcessHandle server = server();

        postgres.close();

        assertThat(server.onExit()).succeedsWithin(GOING);
    }

    @Test
    void refusesASecondStartOnTheSameFolder() {
        assertThatThrownBy(() -> CarriedPostgres.start(settings()))
                .isInstanceOf(DatabaseProblem.class)
                .hasMessage("Benchful is already running on the data folder %s (process %d). Use the one that runs, stop it first,"
                        + " or choose another folder with the setting benchful.data.", folder, ProcessHandle.current().pid());
    }

    @Test
    void takesOverFromAProgramThatWasKilled() throws Exception {
        postgres.close();
        Process other = OtherProgram.start(folder);
        ProcessHandle orphan = server();
        assertThatThrownBy(() -> CarriedPostgres.start(settings())).hasMessageContaining("(process " + other.pid() + ")");

        other.destroyForcibly().waitFor();
        assertThat(orphan.isAlive()).isTrue();
        postgres = CarriedPostgres.start(settings());

        assertThat(orphan.onExit()).succeedsWithin(GOING);
        assertThat(tools()).containsExactly("tool of the other program");
    }

    @Test
    void startsOverAMarkWhoseNumberBelongsToAnotherProcess() throws Exception {
        execute("insert into bench values ('saw')");
        Path mark = folder.resolve("postgres-17/postmaster.pid");
        String text = Files.readString(mark);
        postgres.close();
        Files.writeString(mark, text.replaceFirst("\\d+", Long.toString(ProcessHandle.current().pid())));

        postgres = CarriedPostgres.start(settings());

        assertThat(tools()).containsExactly("saw");
    }

    @Test
    void keepsThePasswordFromOtherAccounts() throws IOException {
        assumeTrue(!PostgresPrograms.isWindows(), "Windows has no file modes");
        assertThat(mode("postgres-17.password")).isEqualTo("rw-------");
        assertThat(mode("postgres-17")).isEqualTo("rwx------");
        assertThat(Files.readString(folder.resolve("postgres-17.password"))).matches("[0-9a-f]{48}");
    }

    @Test
    void turnsAwayAWrongPassword() {
        assertThatThrownBy(() -> DriverManager.getConnection(postgres.url(), ProgramDatabase.ROLE, "guess"))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("password authentication failed");
    }

    @Test
    void givesTheProgramNoPowerOverTheServer() {
        assertThatThrownBy(() -> execute("copy (select 1) to program 'true'"))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("permission denied");
    }

    @Test
    void listensOnLoopbackOnlyAndWritesThroughToTheDisk() throws SQLException {
        assertThat(texts("select setting from pg_settings where name in ('fsync', 'full_page_writes', 'listen_addresses',"
                        + " 'synchronous_commit') order by name"))
                .containsExactly("on", "on", "127.0.0.1", "on");
    }

    @Test
    void beginsEmptyWhereAskedTo() throws Exception {
        postgres.close();

        postgres = CarriedPostgres.start(new DatabaseSettings(folder, false, true));

        assertThat(texts("select tablename from pg_tables where schemaname = 'public'")).isEmpty();
        assertThat(texts("show fsync")).containsExactly("off");
    }

    @Test
    void runsForRootWhereNamespacesAreForbidden() throws Exception {
        assumeTrue(ServerAccount.isRoot(), "only root can run the server as another account");
        execute("insert into bench values ('file')");
        postgres.close();
        Files.delete(folder.resolve("postgres-17.log"));

        postgres = CarriedPostgres.start(settings(), ServerAccount.UNPRIVILEGED);
        assertThat(tools()).containsExactly("file");
        assertThat(Files.getAttribute(folder.resolve("postgres-17/base"), "unix:uid")).isEqualTo(65534);
        postgres.close();

        postgres = CarriedPostgres.start(settings());
        assertThat(tools()).containsExactly("file");
    }

    @Test
    void leavesTheServerOfTheOriginalAloneWhenACopyIsStarted() throws Exception {
        execute("insert into bench values ('pliers')");
        Path copy = home.resolve("a copy");
        copy(folder, copy);

        try (CarriedPostgres other = CarriedPostgres.start(new DatabaseSettings(copy, true, false))) {
            assertThat(other.url()).isNotEqualTo(postgres.url());
        }

        assertThat(tools()).containsExactly("pliers");
        assertThat(server().isAlive()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "not a number\n", "\0\0\0\0"})
    void startsOverAMarkThatAPowerCutTore(String torn) throws Exception {
        execute("insert into bench values ('awl')");
        postgres.close();
        Files.writeString(folder.resolve("postgres-17/postmaster.pid"), torn);

        postgres = CarriedPostgres.start(settings());

        assertThat(tools()).containsExactly("awl");
    }

    @Test
    void drawsANewPasswordWhereItsFileIsGoneOrTorn() throws Exception {
        execute("insert into bench values ('rasp')");
        postgres.close();
        Path file = folder.resolve("postgres-17.password");
        String before = Files.readString(file);
        Files.writeString(file, "");

        postgres = CarriedPostgres.start(settings());

        assertThat(tools()).containsExactly("rasp");
        assertThat(postgres.password()).isNotEqualTo(before);
        assertThat(mode("postgres-17.password")).isEqualTo("rw-------");
    }

    @Test
    void saysTheWayOutOfAWrongPassword() throws Exception {
        execute("insert into bench values ('vice')");
        postgres.close();
        Path file = folder.resolve("postgres-17.password");
        Files.writeString(file, "0123456789ab".repeat(4));

        assertThatThrownBy(() -> CarriedPostgres.start(settings()))
                .isInstanceOf(DatabaseProblem.class)
                .hasMessageContaining("does not take the password in " + folder)
                .hasMessageContaining("delete it")
                .hasMessageNotContaining("Exception");

        Files.delete(file);
        postgres = CarriedPostgres.start(settings());
        assertThat(tools()).containsExactly("vice");
    }

    private static DatabaseSettings settings() {
        return new DatabaseSettings(folder, true, false);
    }

    private static ProcessHandle server() throws IOException {
        return ServerMark.in(folder.resolve("postgres-17")).server().orElseThrow();
    }

    /** As a person copies a folder whose program is running: file by file, the passing ones left out. */
    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (!file.getFileName().toString().startsWith("pgsql_tmp")) {
                    Files.copy(file, to.resolve(from.relativize(file)), StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
                }
            }
        }
    }

    private static String mode(String name) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(name)));
    }

    private Connection connect() throws SQLException {
        return DriverManager.getConnection(postgres.url(), ProgramDatabase.ROLE, postgres.password());
    }

    private void execute(String sql) throws SQLException {
        try (Connection connection = connect(); Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private List<String> tools() throws SQLException {
        return texts("select tool from bench");
    }

    private List<String> texts(String query) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Connection connection = connect();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                texts.add(rows.getString(1));
            }
        }
        return texts;
    }

    private List<String> toolsWhenBack() throws SQLException, InterruptedException {
        long end = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        while (true) {
            try {
                return tools();
            } catch (SQLException e) {
                if (System.nanoTime() > end) {
                    throw e;
                }
                Thread.sleep(100);
            }
        }
    }
}
