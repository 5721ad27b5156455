package benchful.documents.parts;

import java.util.List;
import java.util.stream.Collectors;

/** The signs that a caution shows: drawn where there is a drawing, else in words. */
public record Signage(List<Sign> all) {
    public static final Signage NONE = new Signage(List.of());

    public Signage {
        all = List.copyOf(all);
    }

    /**
     * A sign of ISO 7010 or a pictogram of the GHS.
     *
     * @param picture its drawing; null for none
     * @param code "W021"
     * @param name "Flammable material"
     */
    public record Sign(String picture, String code, String name) {
        /** Codes are the tutor's, who buys signs by them: students read words. */
        public String words() {
            return name;
        }
    }

    public List<Sign> drawn() {
        return all.stream().filter(sign -> sign.picture() != null).toList();
    }

    /** Names of those without a drawing; may be empty. */
    public String undrawn() {
        return all.stream().filter(sign -> sign.picture() == null).map(Sign::words).collect(Collectors.joining(", "));
    }
}
