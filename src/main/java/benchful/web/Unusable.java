package benchful.web;

/**
 * One thing can't be used, as when what is stored of it can't be read any more. It breaks what is made from it and nothing
 * else, and says where it can be mended.
 */
public final class Unusable extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String what;
    private final String path;

    private Unusable(String message, String what, String path, Throwable cause) {
        super(message, cause);
        this.what = what;
        this.path = path;
    }

    /**
     * It was written by hand, by another version, or damaged.
     *
     * @param what in words that may stand within a sentence: "the project “Plant hanger”"
     * @param path of the page on which it is mended; null where only removing it helps
     */
    public static Unusable unreadable(String what, String path, Throwable cause) {
        return new Unusable(what + " can't be read as it is stored", what, path, cause);
    }

    /** The program itself fails at it. */
    public static Unusable failing(String what, String path, Throwable cause) {
        return new Unusable("the program failed at " + what, what, path, cause);
    }

    public String what() {
        return what;
    }

    /** Null where there is none. */
    public String path() {
        return path;
    }
}
