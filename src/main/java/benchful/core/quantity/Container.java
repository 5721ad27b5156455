package benchful.core.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What goods are counted by, in the words of whoever sells them. */
public enum Container {
    SHEET(0),
    CARD(0),
    SPOOL(0),
    REEL(0),
    ROLL(0),
    HANK(0),
    STRAND(0),
    TUBE(0),
    TIN(0),
    BOTTLE(0),
    JAR(0),
    BAG(0),
    BLOCK(0),
    PACK(0),
    BOX(0),
    PAIR(2),
    DOZEN(12),
    REAM(500);

    private final int pieces;

    /** @param pieces that it always holds; 0 where it holds what is said of it */
    Container(int pieces) {
        this.pieces = pieces;
    }

    /** How many pieces it always holds; 0 where that has to be said. */
    public int pieces() {
        return pieces;
    }

    /** "sheet". */
    public String one() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** "sheets", "boxes", "dozen". */
    public String many() {
        return this == DOZEN ? one() : this == BOX ? "boxes" : one() + "s";
    }

    /** The words for one and for many of each. */
    public static Set<String> words() {
        return Arrays.stream(values()).flatMap(c -> Stream.of(c.one(), c.many())).collect(Collectors.toCollection(TreeSet::new));
    }

    /** By the word for one or for many. */
    static Optional<Container> of(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(c -> c.one().equals(lower) || c.many().equals(lower)).findFirst();
    }
}
