package benchful.web.sending;

/** The same form with the same content was taken before: its first answer is the answer. */
final class AlreadySent extends RuntimeException {
    private static final long serialVersionUID = 1;

    AlreadySent() {
        super("The same form was taken before.");
    }
}
