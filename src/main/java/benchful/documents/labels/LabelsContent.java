package benchful.documents.labels;

import benchful.documents.parts.PrintHead;
import java.util.List;

/**
 * Labels in their places on the pages of a label sheet.
 *
 * @param width of the paper, as style sheets write it
 * @param height of the paper, a hair less so that no empty page follows
 */
public record LabelsContent(PrintHead head, String width, String height, List<Page> pages) {

    /** @param title "Sheet 3" */
    public record Page(String title, List<Label> labels) {}

    /**
     * One label; places and sizes [mm] as style sheets write them.
     *
     * @param code picture of its code; null for none
     * @param outline true to draw its edge
     */
    public record Label(String left, String top, String width, String height, String edge, List<Text> texts, String code, String codeSize,
            String address, List<Sign> signs, boolean outline) {}

    /** A sign that the contents call for; place and size [mm] as style sheets write them. */
    public record Sign(String picture, String words, String left, String top, String size) {}

    /**
     * @param size of the letters [pt] as style sheets write it
     * @param leading from line to line, the same
     */
    public record Text(boolean bold, String size, String leading, List<String> lines) {}
}
