package benchful.documents.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is printed on a sheet of labels. */
public enum LabelKind {
    KITS("Kit labels", "one for each kit"),
    SEATS("Seat labels", "one for each student’s place at the bench"),
    TEST("Test sheet for labels", "outlines on plain paper, to hold behind a sheet of labels against the light");

    private final String title;
    private final String about;

    LabelKind(String title, String about) {
        this.title = title;
        this.about = about;
    }

    public String title() {
        return title;
    }

    public String about() {
        return about;
    }

    /** As addresses write it: {@code seats}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<LabelKind> of(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
    }
}
