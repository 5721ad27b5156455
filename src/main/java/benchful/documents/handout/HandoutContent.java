package benchful.documents.handout;

import benchful.documents.parts.PrintHead;
import benchful.documents.parts.Signage;
import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What one student takes home: the piece, what is in the kit, the steps, the strand at full size, care, and how to go on.
 *
 * @param sign name of the picture of the studio's sign; null for none
 * @param summary of the piece for whoever has no class; empty for students
 * @param about the class, with all its meetings
 * @param forWhom "for Imani Okoro, seat 3", or empty
 * @param size "Size 42 cm"
 * @param facts measures of the piece as it comes out
 * @param cover name of the cover picture; null for none
 * @param code name of the picture of the code that opens this handout; null for none
 * @param address what the code says
 * @param more where to buy more of the materials; empty where nothing is written down
 * @param maker of a kit for sale: which it is, and lines of who made it; empty for others
 * @param prepared what was done for the students before the class, in the order of the making
 * @param ready titles of what the tutor prepares for every class
 * @param blocks the steps, those together that share a picture
 * @param cautions of hazards that no step meets
 * @param questions whom to ask at home; empty where nothing is known
 * @param atHome what still happens after the class; empty where the piece is finished there
 */
public record HandoutContent(
        PrintHead head,
        String sign,
        String about,
        String piece,
        String forWhom,
        String size,
        RawString summary,
        List<Fact> facts,
        Figure cover,
        Needed needed,
        List<Prepared> prepared,
        List<String> ready,
        List<StepBlock> blocks,
        List<FullSize> strands,
        List<Caution> cautions,
        List<String> atHome,
        RawString care,
        String code,
        String address,
        String questions,
        String more,
        List<String> maker) {

    /** One after the other. */
    public List<Step> steps() {
        return blocks.stream().flatMap(block -> block.steps().stream()).toList();
    }

    public record Fact(String label, String value) {}

    /** A picture with its words. */
    public record Figure(String name, String alt) {}

    /** One material in the kit, with how much of it: "54", "1 piece of 124 cm". */
    public record KitLine(String amount, String material, String note) {}

    /** A step that the tutor did: how it is made, for the next one at home. */
    public record Prepared(String title, String leave, RawString text) {}

    /**
     * One numbered step.
     *
     * @param kind "make", "show", "wait" or "together"
     * @param brief whether a line says it: its title and time
     * @param time "about 8 min", "watch, 8 min"; empty where a wait says it
     * @param leave for a wait: what it asks, "Leave it for 15 min."; empty otherwise
     * @param meanwhile for a wait: what to do until it is over; may be empty
     * @param cautions of hazards that it is the first to meet, to be read before the text
     * @param again of hazards met before, in a line; may be empty
     * @param pictures in their order
     * @param link address of a film or page; empty for none
     * @param code name of the link's picture; null for none
     * @param meeting where a later meeting begins with it: which and when; empty otherwise
     */
    public record Step(int number, String title, String kind, boolean brief, String time, String leave, String meanwhile, RawString text,
            List<Caution> cautions, String again, List<Figure> pictures, String link, String code, String meeting) {
        private static final int MOST_BESIDE = 2;
        private static final int ACROSS = 3;

        /** Those that stand beside the words, one below the other. */
        public List<Figure> beside() {
            return pictures.size() <= MOST_BESIDE ? pictures : List.of();
        }

        /** Where there are more, they stand below the words, side by side, in rows as even as can be. */
        public List<List<Figure>> below() {
            List<Figure> below = pictures.size() <= MOST_BESIDE ? List.of() : pictures;
            int rows = (below.size() + ACROSS - 1) / ACROSS;
            return IntStream.range(0, rows).mapToObj(row -> below.subList(row * below.size() / rows, (row + 1) * below.size() / rows)).toList();
        }
    }

    /** Usual cautions of one hazard, to whoever does the work. */
    public record Caution(String name, List<String> sentences, Signage signs) {}

    /** A strand drawn 1:1, in as many rows as the page needs, and how its beads are drawn; {@code knots} where it has any. */
    public record FullSize(String title, boolean knots, List<FullRow> rows, List<Legend> legend) {
        /** So few rows that all of them lie beside each other on one side of any paper. */
        public boolean onOneSide() {
            return rows.size() <= 6;
        }
    }

    /** A row of the strand; width and height [mm] as style sheets write them. */
    public record FullRow(String name, String width, String height, String alt) {}

    /** A bead as it is drawn, and its count and name. */
    public record Legend(String picture, String words) {}
}
