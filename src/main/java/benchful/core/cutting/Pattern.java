package benchful.core.cutting;

import java.util.Arrays;

/**
 * What one length is cut into.
 *
 * @param length which length: its place among those on hand, or their number for a new one
 * @param counts pieces of each kind
 */
record Pattern(int length, int[] counts) {
    boolean isEmpty() {
        return Arrays.stream(counts).allMatch(n -> n == 0);
    }
}
