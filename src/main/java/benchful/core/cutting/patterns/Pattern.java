package benchful.core.cutting.patterns;

import java.util.Arrays;

/**
 * What one length is cut into.
 *
 * @param length which of the {@link Kinds#lengths()}
 * @param counts pieces of each kind
 */
public record Pattern(int length, int[] counts) {
    public boolean isEmpty() {
        return Arrays.stream(counts).allMatch(n -> n == 0);
    }

    public long used(Kinds kinds) {
        long used = 0;
        for (int i = 0; i < counts.length; i++) {
            used += counts[i] * kinds.sizes()[i];
        }
        return used;
    }
}
