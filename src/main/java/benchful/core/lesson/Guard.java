package benchful.core.lesson;

import java.time.Duration;

/** Refusals shared by the records' constructors; each says what is wrong and where. */
final class Guard {

    private Guard() {
    }

    static void named(String id, String title) {
        if (id == null || id.isBlank() || title == null || title.isBlank()) {
            throw new IllegalArgumentException("A step needs an id and a title, but has \"" + id + "\" and \"" + title + "\"");
        }
    }

    static void notNegative(Duration length, String what) {
        if (length == null || length.isNegative()) {
            throw new IllegalArgumentException("The length of \"" + what + "\" must be zero or more, not " + length);
        }
    }

    static void atLeast(long least, long value, String what) {
        if (value < least) {
            throw new IllegalArgumentException(what + " must be at least " + least + ", not " + value);
        }
    }
}
