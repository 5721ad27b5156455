package benchful.database;

import java.io.IOException;
import java.sql.SQLException;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * A PostgreSQL server in the program's data folder, from its start to its stop.
 *
 * <p>Its life: the folder is locked against a second program; the programs are unpacked and the files made if this is the first
 * time; a server left over from a program that was killed is stopped; the server starts on a free port of 127.0.0.1; the role and
 * the database are made if missing. If the server dies while the program runs, it is started again on the same port. It stops
 * with the program.
 */
final class CarriedPostgres implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(CarriedPostgres.class);
    private static final int PORTS_TRIED = 5;
    /** PostgreSQL's error code (appendix A of its manual). */
    private static final String WRONG_PASSWORD = "28P01";

    private final FolderLock lock;
    private final ServerWatch watch;
    private final ServerAddress address;

    private CarriedPostgres(FolderLock lock, ServerWatch watch, ServerAddress address) {
        this.lock = lock;
        this.watch = watch;
        this.address = address;
    }

    /**
     * Starts the server and makes the program's database ready.
     *
     * @throws DatabaseProblem if that cannot be done, with what to do about it
     */
    static CarriedPostgres start(DatabaseSettings settings) {
        return start(settings, ServerAccount.ofThisMachine());
    }

    static CarriedPostgres start(DatabaseSettings settings, ServerAccount account) {
        DataFolder folder = DataFolder.open(settings.folder());
        LOG.infof("The database is in %s", folder.root());
        try {
            FolderLock lock = FolderLock.take(folder);
            try {
                return start(settings, account, folder, lock);
            } catch (IOException | SQLException | RuntimeException e) {
                lock.close();
                throw e;
            }
        } catch (SQLException e) {
            throw new DatabaseProblem(refused(folder, e), e);
        } catch (IOException e) {
            throw new DatabaseProblem("The database in " + folder.root() + " could not be started: " + Trouble.words(e) + ".", e);
        }
    }

    private static String refused(DataFolder folder, SQLException e) {
        if (!WRONG_PASSWORD.equals(e.getSQLState())) {
            return "The database in " + folder.root() + " could not be made ready: " + e.getMessage();
        }
        return "PostgreSQL does not take the password in " + folder.root() + " (the file whose name ends in .password). Put that file"
                + " back from a copy of the folder; or delete it: then the next start draws a new password, and no data are lost.";
    }

    private static CarriedPostgres start(DatabaseSettings settings, ServerAccount account, DataFolder folder, FolderLock lock)
            throws IOException, SQLException {
        PostgresPrograms programs = PostgresPrograms.in(folder.programs());
        int version = programs.majorVersion();
        folder.refuseOtherVersions(version);
        PostgresCluster cluster =
                new PostgresCluster(programs, account, folder.cluster(version), folder.log(version), settings.durable());
        String password = makeReady(cluster, folder, version);
        ServerAddress address = new ServerAddress(startOnFreePort(cluster), password);
        CarriedPostgres postgres = new CarriedPostgres(lock, ServerWatch.over(cluster, address.port()), address);
        postgres.prepare(settings.recreated());
        programs.deleteOthers();
        return postgres;
    }

    private static String makeReady(PostgresCluster cluster, DataFolder folder, int version) throws IOException {
        Optional<String> known = folder.password(version);
        String password = known.isPresent() ? known.get() : folder.newPassword(version);
        if (!cluster.exists()) {
            LOG.info("Making a new database; this takes some seconds, once");
            cluster.create(folder.passwordFile(version));
            return password;
        }
        cluster.clearTheWay();
        if (known.isEmpty()) {
            // Lost in a power cut, or deleted. Whoever may write to the folder owns the data, so nobody is let in by this.
            LOG.info("The password file was missing or torn; the database gets a new password");
            cluster.setPassword(password);
        }
        return password;
    }

    private static int startOnFreePort(PostgresCluster cluster) throws IOException {
        String trouble = "";
        for (int attempt = 0; attempt < PORTS_TRIED; attempt++) {
            // Another program may take the port between the look and the start; then the next one is tried.
            int port = ServerAddress.freePort();
            Optional<String> failure = cluster.start(port);
            if (failure.isEmpty()) {
                return port;
            }
            trouble = failure.get();
        }
        throw new DatabaseProblem(Trouble.isFull(trouble)
                ? "PostgreSQL did not start, as the disk is full. Make room on it and start again; what was saved is safe."
                : "PostgreSQL did not start. " + trouble);
    }

    private void prepare(boolean recreated) throws IOException, SQLException {
        try {
            new ProgramDatabase(address).prepare(recreated);
        } catch (SQLException e) {
            watch.stop();
            throw e;
        }
    }

    /** The JDBC address of the program's database. */
    String url() {
        return new ProgramDatabase(address).url();
    }

    /** The password of the program's role. */
    String password() {
        return address.password();
    }

    /** Stops the server and gives the data folder free. */
    @Override
    public void close() throws IOException {
        watch.stop();
        lock.close();
    }
}
