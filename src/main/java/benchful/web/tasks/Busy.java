package benchful.web.tasks;

/** The program works out as much as it can just now: whoever asks for more is told so at once, and when to ask again. Nothing was changed. */
public final class Busy extends RuntimeException {
    private static final long serialVersionUID = 1;

    public Busy() {
        super("As much is worked out as there is room for.");
    }
}
