package benchful.database;

import java.io.IOException;
import java.sql.SQLException;
import org.jboss.logging.Logger;

/**
 * A PostgreSQL server in the program's data folder, from its start to its stop.
 *
 * <p>Its life: the folder is locked against a second program; the programs are unpacked and the files made if this is the first
 * time; a server left over from a program that was killed is stopped; the server starts on a free port of 127.0.0.1; the role and
 * the database are made if missing. If the server dies while the program runs, it is started again on the same port. It stops with
 * the program.
 */
final class CarriedPostgres implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(CarriedPostgres.class);
    private static final int PORTS_TRIED = 5;

    private final DatabaseSettings settings;
    private final FolderLock lock;
    private final PostgresCluster cluster;
    private final ServerAddress address;
    private volatile boolean closing;

    private CarriedPostgres(DatabaseSettings settings, FolderLock lock, PostgresCluster cluster, ServerAddress address) {
        this.settings = settings;
        this.lock = lock;
        this.cluster = cluster;
        this.address = address;
    }

    /**
     * Starts the server and makes the program's database ready.
     *
     * @throws DatabaseProblem if that cannot be done, with what to do about it
     */
    static CarriedPostgres start(DatabaseSettings settings) {
        DataFolder folder = DataFolder.open(settings.folder());
        try {
            FolderLock lock = FolderLock.take(folder);
            try {
                return start(settings, folder, lock);
            } catch (IOException | SQLException | RuntimeException e) {
                lock.close();
                throw e;
            }
        } catch (IOException | SQLException e) {
            throw new DatabaseProblem("The database in " + folder.root() + " could not be started: " + e, e);
        }
    }

    private static CarriedPostgres start(DatabaseSettings settings, DataFolder folder, FolderLock lock)
            throws IOException, SQLException {
        PostgresPrograms programs = PostgresPrograms.in(folder.programs());
        int version = programs.majorVersion();
        String password = folder.password(version);
        PostgresCluster cluster = new PostgresCluster(
                programs, ServerAccount.ofThisMachine(), folder.cluster(version), folder.log(version));
        if (cluster.exists()) {
            cluster.stopOrphan();
        } else {
            LOG.infof("Making a new database in %s; this takes some seconds, once", folder.root());
            cluster.create(folder.passwordFile(version), settings.durable());
        }
        ServerAddress address = new ServerAddress(startOnFreePort(cluster, settings), password);
        CarriedPostgres postgres = new CarriedPostgres(settings, lock, cluster, address);
        postgres.watch();
        new ProgramDatabase(address).prepare(settings.recreated());
        programs.deleteOthers();
        return postgres;
    }

    private static int startOnFreePort(PostgresCluster cluster, DatabaseSettings settings) throws IOException {
        for (int attempt = 0; attempt < PORTS_TRIED; attempt++) {
            // Another program may take the port between the look and the start; then the next one is tried.
            int port = ServerAddress.freePort();
            if (cluster.start(port, settings.durable())) {
                return port;
            }
        }
        throw new DatabaseProblem("PostgreSQL did not start. " + cluster.explanation());
    }

    String url() {
        return new ProgramDatabase(address).url();
    }

    ServerAddress address() {
        return address;
    }

    /** The process of the server. */
    ProcessHandle server() throws IOException {
        return cluster.server();
    }

    private void watch() throws IOException {
        cluster.server().onExit().thenRun(this::startAgain);
    }

    private synchronized void startAgain() {
        if (closing) {
            return;
        }
        LOG.warn("PostgreSQL has ended unexpectedly; starting it again");
        try {
            if (!cluster.start(address.port(), settings.durable())) {
                LOG.errorf("PostgreSQL did not start again. %s", cluster.explanation());
                return;
            }
            watch();
        } catch (IOException e) {
            LOG.error("PostgreSQL did not start again", e);
        }
    }

    /** Stops the server and gives the data folder free. */
    @Override
    public void close() throws IOException {
        closing = true;
        synchronized (this) {
            cluster.stop();
            lock.close();
        }
    }
}
