package benchful.studio;

import java.util.Arrays;
import java.util.Optional;

/** The page sizes that printers at home and in copy shops hold. */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("US Letter", 215.9, 279.4);

    private final String title;
    private final double width;
    private final double height;

    Paper(String title, double width, double height) {
        this.title = title;
        this.width = width;
        this.height = height;
    }

    public String title() {
        return title;
    }

    /** [mm] */
    public double width() {
        return width;
    }

    /** [mm] */
    public double height() {
        return height;
    }

    /** As addresses write it: {@code a4}, {@code letter}. */
    public String slug() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static Optional<Paper> of(String slug) {
        return Arrays.stream(values()).filter(paper -> paper.slug().equals(slug)).findFirst();
    }
}
