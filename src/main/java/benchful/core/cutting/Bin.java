package benchful.core.cutting;

import java.util.ArrayList;
import java.util.List;

/** A length at work: what has been put on it and what is left, counting a loss after every piece. */
final class Bin {
    final long length;
    final boolean bought;
    final List<Item> items = new ArrayList<>();
    private long free;

    /** @param length [um], and {@code loss} at a cut: the last piece may end at the very end, where no cut is needed */
    Bin(long length, boolean bought, long loss) {
        this.length = length;
        this.bought = bought;
        this.free = length + loss;
    }

    /** One piece to cut. */
    record Item(String label, long length) {}

    boolean takes(Item item, long loss) {
        return item.length() + loss <= free;
    }

    long free() {
        return free;
    }

    void put(Item item, long loss) {
        items.add(item);
        free -= item.length() + loss;
    }
}
