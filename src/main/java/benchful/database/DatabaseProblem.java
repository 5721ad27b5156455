package benchful.database;

/** Why the carried database cannot run, in words for the person who started the program: what, where, how to mend it. */
public final class DatabaseProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    DatabaseProblem(String message) {
        super(message);
    }

    DatabaseProblem(String message, Throwable cause) {
        super(message, cause);
    }
}
