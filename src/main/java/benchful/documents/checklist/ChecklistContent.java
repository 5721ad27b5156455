package benchful.documents.checklist;

import benchful.documents.lists.PlanTable;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.Signage;
import java.util.List;

/**
 * What the tutor does from the days before to the last look round, from what the project and the venue really need.
 *
 * @param summary students, level, hours
 * @param plan null where the class can't be planned yet
 */
public record ChecklistContent(PrintHead head, String summary, List<Section> sections, PlanTable plan) {

    /** @param lead a sentence before the boxes; may be empty */
    public record Section(String title, String lead, List<Item> items) {}

    /**
     * A box to tick.
     *
     * @param at a time or a day before the text; may be empty
     * @param note what to mind; may be empty
     * @param signs to show; may be none
     */
    public record Item(String at, String text, String note, Signage signs) {
        private static final int LONG = 150;

        Item(String at, String text, String note) {
            this(at, text, note, Signage.NONE);
        }

        /** Whether it takes so many lines of large print that it may go on on the next page. */
        public boolean isLong() {
            return !signs.all().isEmpty() || text.length() + note.length() > LONG;
        }

        static Item of(String text) {
            return new Item("", text, "");
        }

        static Item noted(String text, String note) {
            return new Item("", text, note);
        }
    }
}
