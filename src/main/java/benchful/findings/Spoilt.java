package benchful.findings;

import benchful.classes.Picks;
import benchful.core.learning.WasteRate.Seen;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.Requirements;
import benchful.projects.MaterialLine;
import benchful.reviews.ReviewSpec.MaterialNote;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one class shows of what spoils of its materials: what broke, or, where it ran short, all that was brought beyond the net amount and
 * what was missing. Variants are seen together with their material. Of what nothing was said nothing is known.
 */
final class Spoilt {
    private final Reviewed reviewed;
    private final Requirements required;
    private final Map<String, MaterialNote> notes = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    /** @param required what the class took as it was planned */
    Spoilt(Reviewed reviewed, Requirements required) {
        this.reviewed = reviewed;
        this.required = required;
        this.notes.putAll(reviewed.materials());
    }

    /** Whether a line has an allowance that classes can teach: each takes it, and it is used up. */
    static boolean learns(MaterialLine line) {
        return !line.shared() && !line.lent();
    }

    /** By the materials of the project's lines. */
    Map<String, Seen> seen() {
        Picks picks = new Picks(reviewed.file().setup(), reviewed.file().materials());
        Map<String, Seen> seen = new LinkedHashMap<>();
        for (MaterialLine line : reviewed.file().project().materials()) {
            if (learns(line) && !seen.containsKey(line.material())) {
                picks.possible(line).stream().map(this::seen).flatMap(Optional::stream)
                        .reduce((a, b) -> new Seen(a.day(), a.taken() + b.taken(), a.spoilt() + b.spoilt())).ifPresent(s -> seen.put(line.material(), s));
            }
        }
        return seen;
    }

    private Optional<Seen> seen(String material) {
        Need need = required.needs().get(material);
        MaterialNote note = notes.get(material);
        if (need == null || note == null || need.net().signum() <= 0) {
            return Optional.empty();
        }
        double things = things(need);
        return spoilt(need, note).map(amount -> new Seen(reviewed.day(), things, amount.base().doubleValue() / need.net().base().doubleValue() * things));
    }

    /** Pieces, where it is counted or cut; else as many as there are kits. */
    private double things(Need need) {
        if (need.net().dimension().equals(Dimension.COUNT)) {
            return need.net().base().doubleValue();
        }
        int pieces = need.cuts().stream().filter(c -> !c.isReserve()).mapToInt(CutNeed::count).sum();
        return pieces > 0 ? pieces : required.kits().size();
    }

    /** Nothing where it was noted in what the material is not counted in. */
    private static Optional<Quantity> spoilt(Need need, MaterialNote note) {
        boolean isShort = note.missing() != null && note.missing().signum() > 0;
        Quantity noted = isShort ? note.missing() : note.broken() == null ? Quantity.zero(need.net().unit()) : note.broken();
        Quantity sized = noted.sized(need.net().unit());
        if (!sized.dimension().equals(need.net().dimension())) {
            return Optional.empty();
        }
        return Optional.of(isShort ? need.waste().plus(sized) : sized);
    }
}
