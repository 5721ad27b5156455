package benchful.documents.parts;

import benchful.hazards.HazardSpec;
import benchful.hazards.Signs;
import java.util.List;

/** Puts the signs that hazards call for on paper. */
public final class PrintedSigns {
    private final PictureBag bag;

    public PrintedSigns(PictureBag bag) {
        this.bag = bag;
    }

    /** The signs of a workplace first, then the pictograms on the bottle. */
    public Signage of(HazardNote hazard) {
        return new Signage(hazard.signs().stream().map(this::sign).toList());
    }

    /** Those that warn, forbid or tell what to wear: a sign of safe condition, such as first aid, marks no hazard. */
    public Signage ofHazard(HazardNote hazard) {
        return new Signage(of(hazard).all().stream().filter(sign -> !sign.code().startsWith("E")).toList());
    }

    /** A single sign. */
    public Signage of(HazardSpec.Sign sign) {
        return new Signage(List.of(sign(sign)));
    }

    private Signage.Sign sign(HazardSpec.Sign sign) {
        return new Signage.Sign(Signs.svg(sign.code()).map(svg -> bag.sign(sign.code(), svg)).orElse(null), sign.code(), sign.name());
    }
}
