package benchful.database;

import com.sun.security.auth.module.UnixSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * As whom the server runs. PostgreSQL refuses to run as the system's administrator. Where the program itself runs as root (a
 * container, a rescue shell), the server gets a user namespace of its own, in which root's files stay its own but its powers
 * end; where the system forbids that, it runs as the account that owns nothing.
 *
 * @param prefix what stands before each command
 * @param owner  the number of the account that must own the server's files; empty: whoever made them
 */
record ServerAccount(List<String> prefix, Optional<Integer> owner) {
    private static final int NOBODY = 65534;

    /** The account of an ordinary user: the server runs as the program does. */
    static final ServerAccount ORDINARY = new ServerAccount(List.of(), Optional.empty());

    static final ServerAccount NAMESPACE = new ServerAccount(List.of("unshare", "--user"), Optional.of(0));

    // dac_override is the one power kept: without it the account could not pass root's closed home to the data folder.
    // no_setuid_fixup lets it count in access(2), too, by which PostgreSQL looks for its own programs.
    static final ServerAccount UNPRIVILEGED = new ServerAccount(
            List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups",
                    "--securebits=+no_setuid_fixup", "--inh-caps=-all,+dac_override",
                    "--ambient-caps=-all,+dac_override"),
            Optional.of(NOBODY));

    ServerAccount {
        prefix = List.copyOf(prefix);
    }

    static ServerAccount ofThisMachine() {
        if (!isRoot()) {
            return ORDINARY;
        }
        if (NAMESPACE.works()) {
            return NAMESPACE;
        }
        if (UNPRIVILEGED.works()) {
            return UNPRIVILEGED;
        }
        throw new DatabaseProblem("PostgreSQL refuses to run as root, and this system lets root neither give it a user namespace"
                + " (unshare --user) nor run it as another account (setpriv). Run the program as an ordinary user, or point the"
                + " setting quarkus.datasource.jdbc.url at a PostgreSQL server.");
    }

    static boolean isRoot() {
        return !PostgresPrograms.isWindows() && new UnixSystem().getUid() == 0;
    }

    List<String> command(List<String> command) {
        List<String> whole = new ArrayList<>(prefix);
        whole.addAll(command);
        return whole;
    }

    /** Gives files of the server to this account, if an earlier start made them as another. */
    void own(Path files) throws IOException {
        if (owner.isPresent() && Files.exists(files) && !owner.get().equals(Files.getAttribute(files, "unix:uid"))) {
            Trees.giveTo(files, owner.get());
        }
    }

    private boolean works() {
        try {
            return Command.run(command(List.of("true"))).succeeded();
        } catch (IOException e) {
            return false; // the tool is not installed
        }
    }
}
