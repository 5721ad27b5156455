package benchful.core.cutting.sheets;

import org.jspecify.annotations.Nullable;

/**
 * How a rectangle is divided by cuts from edge to edge, losses included.
 *
 * @param kind of the piece that lies in its corner; none where it is divided or empty
 * @param turned whether the piece lies with its width along the sheet's length
 * @param across whether it is divided by a cut across the sheet's length
 * @param at how far from the corner it is divided [um]
 * @param first the part at the corner; null, as the second, where it is not divided
 */
record CutTree(int kind, boolean turned, boolean across, long at, @Nullable CutTree first, @Nullable CutTree second) {
    private static final int NONE = -1;

    static final CutTree EMPTY = new CutTree(NONE, false, false, 0, null, null);

    static CutTree piece(int kind, boolean turned) {
        return new CutTree(kind, turned, false, 0, null, null);
    }

    static CutTree divided(boolean across, long at, CutTree first, CutTree second) {
        return new CutTree(NONE, false, across, at, first, second);
    }

    boolean isDivided() {
        return first != null;
    }

    boolean isPiece() {
        return kind != NONE;
    }

    /** Adds its pieces to the counts by kind. */
    void count(int[] counts) {
        if (first != null && second != null) {
            first.count(counts);
            second.count(counts);
        } else if (isPiece()) {
            counts[kind]++;
        }
    }
}
