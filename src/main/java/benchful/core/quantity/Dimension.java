package benchful.core.quantity;

import java.util.Map;

/**
 * What kind of amount a value is: exponents of length and mass. A count has neither; an area is length squared.
 *
 * @param length exponent of length, base unit [mm]
 * @param mass exponent of mass, base unit [g]
 */
public record Dimension(int length, int mass) {
    public static final Dimension COUNT = new Dimension(0, 0);
    public static final Dimension LENGTH = new Dimension(1, 0);
    public static final Dimension AREA = new Dimension(2, 0);
    public static final Dimension VOLUME = new Dimension(3, 0);
    public static final Dimension MASS = new Dimension(0, 1);
    /** Of "20 sheets", while nobody has said how large one is. */
    public static final Dimension UNSIZED = new Dimension(99, 0);

    private static final Map<Dimension, String> NAMES =
            Map.of(COUNT, "a count", LENGTH, "a length", AREA, "an area", VOLUME, "a volume", MASS, "a mass", UNSIZED, "a number of things whose size is not said");

    public Dimension times(Dimension other) {
        return new Dimension(length + other.length, mass + other.mass);
    }

    public Dimension over(Dimension other) {
        return new Dimension(length - other.length, mass - other.mass);
    }

    /** The words for messages: "a length", "a mass"; a mixed one is spelt out by its exponents. */
    public String words() {
        return NAMES.getOrDefault(this, "mm^%d g^%d".formatted(length, mass));
    }
}
