package benchful.projects.writing;

import benchful.core.Fault;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What a project that is being written comes to so far: the kit of one size, and its handout as it will print.
 *
 * @param sight null where nothing can be shown yet
 * @param missing what is to be written first for more; the first few
 * @param leftOut what is not whole and therefore not shown, in words
 */
@TemplateData
public record Preview(Sight sight, List<Fault> missing, List<String> leftOut) {
    private static final int MOST_TOLD = 4;

    public Preview {
        missing = missing.stream().limit(MOST_TOLD).toList();
        leftOut = List.copyOf(leftOut);
    }

    /**
     * What is seen.
     *
     * @param size that it is of
     * @param sizes that it may be of
     * @param lists the kit, what is beside it, and the tools
     * @param pages of the handout as pictures, for the page's sources
     * @param pagesInAll also those that are not shown
     * @param unknown what could not be worked out, in sentences
     */
    @TemplateData
    public record Sight(String size, List<String> sizes, List<Listed> lists, List<String> pages, int pagesInAll, List<String> unknown) {}

    /** A titled list: "Materials", each with how much of it. */
    @TemplateData
    public record Listed(String title, List<String> lines) {}
}
