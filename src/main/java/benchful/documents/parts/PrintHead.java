package benchful.documents.parts;

import benchful.documents.paper.Version;
import benchful.studio.Paper;
import benchful.studio.StudioSpec;
import benchful.web.Writing;
import io.quarkus.qute.RawString;
import java.util.List;

/**
 * What every print-out carries.
 *
 * @param title of the document: "Handout, size 42 cm"
 * @param about the class: title, day and hours
 * @param foot the same as it stands in the footer, shorter in large print
 * @param where the venue's name; empty where none is chosen
 * @param studio its name and how to reach it, in a line; empty where nothing is known
 * @param style the style sheet, whole
 * @param look class names of the body: the version and the paper
 * @param bookmarks in order of the document
 */
public record PrintHead(String title, String about, String foot, String where, String studio, RawString style, String look, List<Bookmark> bookmarks) {
    private static final int LONGEST = 60;

    /** For a print-out of a class; its footer names the class. */
    public static PrintHead of(PrintSource source, String title, RawString style, Paper paper, Version version, List<Bookmark> bookmarks) {
        String about = source.when().isEmpty() ? source.title() : source.title() + ", " + source.when();
        return of(title, about, source.title(), source.where(), source.studio(), style, paper, version, bookmarks);
    }

    /** For a print-out of a thing that no class is about; its footer names the thing. */
    public static PrintHead of(String thing, StudioSpec studio, String title, RawString style, Paper paper, Version version, List<Bookmark> bookmarks) {
        return of(title, thing, thing, "", studio, style, paper, version, bookmarks);
    }

    private static PrintHead of(String title, String about, String name, String where, StudioSpec studio, RawString style, Paper paper, Version version, List<Bookmark> bookmarks) {
        return new PrintHead(title, about, version == Version.LARGE ? shortened(name) : about, where, studio.line(), style, version.slug() + " " + paper.slug(), bookmarks);
    }

    /** With a footer for what is used in all meetings. */
    public PrintHead underAll(PrintSource source, Version version) {
        int meetings = source.file().setup().meetings().size();
        String all = version == Version.LARGE || meetings < 2 ? foot : "%s, %d meetings from %s".formatted(source.title(), meetings, source.meeting(0));
        return new PrintHead(title, about, all, where, studio, style, look, bookmarks);
    }

    public PrintHead {
        bookmarks = List.copyOf(bookmarks);
    }

    /** As the file says it of itself, after BCP 47. */
    public String language() {
        return Writing.current().language();
    }

    /** Two lines of large print at the most. */
    private static String shortened(String title) {
        return title.codePointCount(0, title.length()) <= LONGEST ? title : title.substring(0, title.offsetByCodePoints(0, LONGEST)).strip() + "…";
    }

    /** An entry of the PDF's outline, to the element with this id. */
    public record Bookmark(String name, String id) {}
}
