package benchful.documents.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** For whom, or on which printer, a print-out is set. */
public enum Version {
    NORMAL("Normal"),
    /** No letter smaller than 18 pt. */
    LARGE("Large print, 18 pt"),
    /** No tints, thin rules, small cover picture. */
    LOW_INK("Low ink");

    private final String title;

    Version(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    /** As addresses and style sheets write it: {@code low-ink}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Version> of(String slug) {
        return Arrays.stream(values()).filter(version -> version.slug().equals(slug)).findFirst();
    }
}
