package benchful.core.cutting;

import java.util.ArrayList;
import java.util.List;

/** The longest piece first, onto the first length that still takes it, those on hand before new ones. */
final class FirstFit {
    private final Kinds kinds;
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Long> free = new ArrayList<>();

    private FirstFit(Kinds kinds) {
        this.kinds = kinds;
        for (int h = 0; h < kinds.onHand().length; h++) {
            open(h);
        }
    }

    /** Patterns that give every piece; every piece must fit a new length. */
    static List<Pattern> fill(Kinds kinds) {
        FirstFit fit = new FirstFit(kinds);
        for (int kind = 0; kind < kinds.kinds(); kind++) {
            for (int piece = 0; piece < kinds.demand()[kind]; piece++) {
                fit.put(kind);
            }
        }
        return fit.patterns.stream().filter(p -> !p.isEmpty()).toList();
    }

    private void put(int kind) {
        int at = 0;
        while (at < free.size() && free.get(at) < kinds.sizes()[kind]) {
            at++;
        }
        if (at == free.size()) {
            open(kinds.onHand().length);
        }
        patterns.get(at).counts()[kind]++;
        free.set(at, free.get(at) - kinds.sizes()[kind]);
    }

    private void open(int length) {
        patterns.add(new Pattern(length, new int[kinds.kinds()]));
        free.add(kinds.capacity(length));
    }
}
