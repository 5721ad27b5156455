package benchful.database;

import com.sun.security.auth.module.UnixSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * As whom the server runs. PostgreSQL refuses to run as the system's administrator; where the program itself runs as root (a
 * container, a rescue shell), the server gets a user namespace of its own, in which root's files stay its own but its powers end.
 *
 * @param prefix what stands before each command
 */
record ServerAccount(List<String> prefix) {
    private static final List<String> NAMESPACE = List.of("unshare", "--user");

    ServerAccount {
        prefix = List.copyOf(prefix);
    }

    static ServerAccount ofThisMachine() throws IOException {
        if (!isRoot()) {
            return new ServerAccount(List.of());
        }
        if (works(NAMESPACE)) {
            return new ServerAccount(NAMESPACE);
        }
        throw new DatabaseProblem("PostgreSQL refuses to run as root, and this system forbids root to give it a user namespace"
                + " (unshare --user). Run the program as an ordinary user, or point the setting quarkus.datasource.jdbc.url"
                + " at a PostgreSQL server.");
    }

    List<String> command(List<String> command) {
        List<String> whole = new ArrayList<>(prefix);
        whole.addAll(command);
        return whole;
    }

    private static boolean isRoot() {
        return !PostgresPrograms.isWindows() && new UnixSystem().getUid() == 0;
    }

    private static boolean works(List<String> prefix) throws IOException {
        List<String> trial = new ArrayList<>(prefix);
        trial.add("true");
        try {
            return Command.run(trial).succeeded();
        } catch (IOException e) {
            return false; // the tool is not installed
        }
    }
}
