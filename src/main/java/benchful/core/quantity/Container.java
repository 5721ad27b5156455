package benchful.core.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What goods are counted by, in the words of whoever sells them. */
public enum Container {
    SHEET(0),
    /** Cut off a roll of a width. */
    METRE(Unit.M),
    /** The same. */
    YARD(Unit.YARD),
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
    private final @Nullable Unit run;

    /** @param pieces that it always holds; 0 where it holds what is said of it */
    Container(int pieces) {
        this.pieces = pieces;
        this.run = null;
    }

    /** @param run the unit in which it runs off a roll */
    Container(Unit run) {
        this.pieces = 0;
        this.run = run;
    }

    /** The unit in which it runs off a roll; null for other things. */
    @Nullable Unit run() {
        return run;
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

    /** The words for one and for many of each; what runs off a roll is written by its length and width instead. */
    public static Set<String> words() {
        return Arrays.stream(values()).filter(c -> c.run == null).flatMap(c -> Stream.of(c.one(), c.many())).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What runs off a roll by this unit. */
    static Optional<Container> running(Unit unit) {
        return Arrays.stream(values()).filter(c -> c.run != null && c.run.equals(unit)).findFirst();
    }

    /** By the word for one or for many. */
    static Optional<Container> of(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(c -> c.run == null && (c.one().equals(lower) || c.many().equals(lower))).findFirst();
    }
}
