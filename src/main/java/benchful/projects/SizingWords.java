package benchful.projects;

import benchful.web.Formats;
import java.util.Map;

/** What each value of a working means, for its field in the form. */
public final class SizingWords {
    private static final Map<String, String> HINTS = Map.ofEntries(
            Map.entry("target", "Finished length asked for, closure included"),
            Map.entry("wrist", "Wrist or finger, measured close"),
            Map.entry("ease", "Added for comfort"),
            Map.entry("closure", "What the closure adds to the length"),
            Map.entry("knots", "1 for a knot between all beads"),
            Map.entry("ends", "Knots under the closure’s covers, 0 to 2"),
            Map.entry("cord", "Its diameter"),
            Map.entry("knot", "Length one knot adds; empty: 2 × cord"),
            Map.entry("take", "Cord one knot takes up; empty: 10.1 × cord"),
            Map.entry("symmetric", "1 to mirror the pattern about the centre"),
            Map.entry("graduated", "1 where the pattern runs from end to centre and is mirrored"),
            Map.entry("maximum", "Most beads there are"),
            Map.entry("tolerance", "How far off the length may be for a whole pattern; empty: 20 mm for a strand, 6 mm for a bracelet"),
            Map.entry("mandrel", "Its diameter"),
            Map.entry("wire", "Its diameter"),
            Map.entry("turns", "How many; empty: 1"),
            Map.entry("straight", "Straight wire at the ends, in all"),
            Map.entry("density", "Such as 8.96 g_per_cm3; empty where the mass is not asked"),
            Map.entry("density_a", "Such as 1.1 g_per_cm3"),
            Map.entry("density_b", "Such as 1.0 g_per_cm3"),
            Map.entry("volume", "Of one piece, such as 5 ml"),
            Map.entry("weight_a", "Parts by weight, such as 2"),
            Map.entry("weight_b", "Parts by weight, such as 1"),
            Map.entry("volume_a", "Parts by volume, such as 1"),
            Map.entry("volume_b", "Parts by volume, such as 1"),
            Map.entry("width", "Of one piece"),
            Map.entry("height", "Of one piece"),
            Map.entry("pieces", "How many for one student; empty: 1"),
            Map.entry("kerf", "Lost at each cut"),
            Map.entry("sheet_width", "Of the sheet it is cut from"),
            Map.entry("sheet_height", "Of the sheet it is cut from"),
            Map.entry("thickness", "For the mass, with the density"));

    private SizingWords() {}

    public static String hint(String value) {
        return HINTS.get(value);
    }

    /** "Sheet width", "Part a by weight". */
    public static String label(String value) {
        if (value.startsWith("weight_") || value.startsWith("volume_")) {
            return "Part %s by %s".formatted(value.substring(7), value.substring(0, 6));
        }
        return Formats.capital(value.startsWith("density_") ? "density of part " + value.substring(8) : value.replace('_', ' '));
    }
}
