package benchful.bin;

import io.quarkus.qute.TemplateData;
import java.util.List;

/** How putting something back ended. */
sealed interface RestorationOutcome {

    /** All is as it was. */
    record Back(String address) implements RestorationOutcome {}

    /** Something else bears the name meanwhile. */
    record Taken(List<NameTaken> names) implements RestorationOutcome {}

    /**
     * What it can't be without was removed too.
     *
     * @param entries of the bin that hold it; none where it is gone for good
     */
    record Lacking(List<BinEntry> entries) implements RestorationOutcome {}

    /** Something else stands in its place. */
    record Occupied() implements RestorationOutcome {}

    /**
     * A name that is taken.
     *
     * @param table of the thing in the bin
     */
    @TemplateData
    record NameTaken(String table, long id, String name) {
        /** Of a name [characters], as the sheets allow. */
        static final int LONGEST = 120;

        private static final String AGAIN = " (put back)";

        /** Of the form that asks for another name. */
        public String field() {
            return field(table, id);
        }

        static String field(String table, long id) {
            return "name-%s-%d".formatted(table, id);
        }

        public String proposal() {
            return name.substring(0, Math.min(name.length(), LONGEST - AGAIN.length())) + AGAIN;
        }
    }
}
