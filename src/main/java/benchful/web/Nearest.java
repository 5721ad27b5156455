package benchful.web;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what somebody probably meant by a word that is not known. */
public final class Nearest {
    private Nearest() {}

    /** The known word that a few slips turn into this one: at most one for each three letters, two in five; nothing where none is so near. */
    public static Optional<String> to(String word, Collection<String> known) {
        return known.stream().filter(k -> slips(word, k) <= Math.max(1, (Math.min(word.length(), k.length()) + 1) / 3))
                .min(Comparator.<String>comparingInt(k -> slips(word, k)).thenComparing(Comparator.naturalOrder()));
    }

    /**
     * Letters left out, put in, mistaken or swapped with their neighbour (optimal string alignment).
     *
     * <p>Source: F. J. Damerau, A technique for computer detection and correction of spelling errors, Communications of the ACM 7
     * (1964), 171-176, for the four kinds of slips.
     */
    static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        int mistaken = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(mistaken, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
