package benchful.documents;

import java.util.List;

/**
 * The timed plan as a picture and a table.
 *
 * @param picture its drawing
 * @param verdict whether it fits, a sentence
 * @param ahead what is done before the class; may be empty
 */
public record PlanTable(HandoutSheet.Figure picture, String verdict, List<Row> rows, List<Ahead> ahead) {

    /**
     * One line, by start.
     *
     * @param clock "13:08–13:20", a line for each stretch; with the day where there is more than one meeting
     * @param number of the step; empty for a break
     * @param remark "decides the end", "ready 14:05", "goes on at home"
     */
    public record Row(List<String> clock, String minutes, String number, String title, String kind, String tools, String remark, boolean pause) {}

    public record Ahead(String title, String time) {}
}
