package benchful.documents.lists;

import benchful.documents.handout.HandoutContent;
import java.util.List;

/**
 * The timed plan as a picture and a table.
 *
 * @param pictures its drawing; one for each meeting in large print
 * @param verdict whether it fits, a sentence
 * @param narrow whether kind and tools stand below a step's title, as in large print, instead of in columns
 * @param ahead what is done before the class; may be empty
 */
public record PlanTable(List<HandoutContent.Figure> pictures, String verdict, boolean narrow, List<Day> days, List<Ahead> ahead) {

    /**
     * The rows of one day.
     *
     * @param title "Thu 18 Mar 2027"; empty where the class meets once
     */
    public record Day(String title, List<Row> rows) {}

    /**
     * One line, by start.
     *
     * @param clock "13:08–13:20", a line for each stretch
     * @param number of the step; empty for a break
     * @param remark "may begin 20 min later", "goes on at home"; empty where a delay is one of the whole class
     */
    public record Row(List<String> clock, String minutes, String number, String title, String kind, String tools, String remark, boolean pause) {
        /** "make; 6 silicone mat, 6 tweezers". */
        public String below() {
            return tools.isEmpty() ? kind : kind + "; " + tools;
        }
    }

    public record Ahead(String title, String time) {}
}
