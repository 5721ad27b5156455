package benchful.findings;

/** What classes showed of one thing that stands in a project's sheet, or in the setup of a class. */
public sealed interface Learned permits ForSheet, ForClass {

    /** Tells it from all others of its project: a step's short name, or what kind it is and a name, such as {@code help:}, {@code material:}, {@code level:}, {@code break:} or {@code tool:}. */
    String key();

    String title();

    /** As it stands there. */
    Setting now();

    Setting proposed();

    /** The reviews that it comes from, each with what it says: there is new data where this is another. */
    String evidence();

    int classes();

    /** Whether what is proposed differs so much from what stands there that it should be changed. */
    boolean differs();

    /** Whether the tutor refused just this and nothing new is known. */
    boolean refused();

    default boolean open() {
        return differs() && !refused();
    }
}
