package benchful.database;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * Watches a running server and starts it again, on the same port, if it dies: the program's connections find it where it was.
 * A server that keeps dying is given up, with the reason in the program's log.
 */
final class ServerWatch {
    private static final Logger LOG = Logger.getLogger(ServerWatch.class);
    private static final int MOST_FAILURES = 5;
    private static final Duration SETTLED = Duration.ofSeconds(10);

    private final PostgresCluster cluster;
    private final int port;
    private volatile boolean stopping;

    private ServerWatch(PostgresCluster cluster, int port) {
        this.cluster = cluster;
        this.port = port;
    }

    static ServerWatch over(PostgresCluster cluster, int port) {
        ServerWatch watch = new ServerWatch(cluster, port);
        Thread thread = new Thread(watch::run, "database-watch");
        thread.setDaemon(true);
        thread.start();
        return watch;
    }

    /** Stops the server for good. */
    void stop() throws IOException {
        stopping = true;
        synchronized (this) {
            cluster.stop();
        }
    }

    private void run() {
        try {
            for (int failures = 0; failures <= MOST_FAILURES; ) {
                boolean settled = outlived(SETTLED);
                if (stopping) {
                    return;
                }
                failures = settled ? 0 : failures + 1;
                // A pause that grows: processes of the dead server may need a moment to go, too.
                Thread.sleep(failures * 500L);
                startAgain();
            }
            LOG.error("PostgreSQL keeps ending and is given up. Restart the program; its message will say more");
        } catch (IOException e) {
            LOG.error("PostgreSQL has ended and could not be started again", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits for the server's end; true if it had run for longer than the span. */
    private boolean outlived(Duration span) throws IOException {
        long begun = System.nanoTime();
        Optional<ProcessHandle> server = cluster.server();
        server.ifPresent(process -> process.onExit().join());
        return System.nanoTime() - begun > span.toNanos();
    }

    private synchronized void startAgain() throws IOException {
        if (!stopping) {
            LOG.warn("PostgreSQL has ended unexpectedly; starting it again");
            cluster.start(port).ifPresent(LOG::error);
        }
    }
}
