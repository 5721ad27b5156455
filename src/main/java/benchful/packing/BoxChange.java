package benchful.packing;

import java.util.List;
import java.util.function.Predicate;

/**
 * What a packer changed about a box.
 *
 * @param kit    its key
 * @param tick   which of its materials are packed
 * @param untick materials that are put back
 */
record BoxChange(String kit, Predicate<String> tick, List<String> untick) {
    BoxChange {
        untick = List.copyOf(untick);
    }

    static BoxChange of(String kit, List<String> tick, List<String> untick) {
        return new BoxChange(kit, tick::contains, untick);
    }

    /** All of it is packed. */
    static BoxChange whole(String kit) {
        return new BoxChange(kit, material -> true, List.of());
    }
}
