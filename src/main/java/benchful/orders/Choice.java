package benchful.orders;

import benchful.batches.KitBatch;
import benchful.classes.CraftClass;
import java.util.List;

/**
 * What is bought for together.
 *
 * @param fill whether the shelf is filled to the least that should lie there, once the classes have taken theirs
 */
public record Choice(List<CraftClass> classes, List<KitBatch> kits, boolean fill) {
    public Choice {
        classes = List.copyOf(classes);
        kits = List.copyOf(kits);
    }

    /** Tells one choice from another. */
    String ids() {
        return "%s %s %s".formatted(classes.stream().map(CraftClass::id).toList(), kits.stream().map(KitBatch::id).toList(), fill);
    }
}
