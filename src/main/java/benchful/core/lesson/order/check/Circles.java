package benchful.core.lesson.order.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Bounds of the form "this node lies at least so many seconds after that one". They contradict each other exactly if a circle
 * of them adds up to more than zero. Bellman-Ford from all nodes at once, O(nodes x bounds).
 */
final class Circles {

    private record Arc(int from, int to, long seconds) {
    }

    private final int nodes;
    private final List<Arc> arcs = new ArrayList<>();

    Circles(int nodes) {
        this.nodes = nodes;
    }

    /** Node {@code to} lies at least {@code seconds} after node {@code from}. */
    void add(int from, int to, long seconds) {
        arcs.add(new Arc(from, to, seconds));
    }

    /** The nodes of a circle longer than zero, in order; empty if there is none. */
    List<Integer> find() {
        long[] at = new long[nodes];
        Arc[] by = new Arc[nodes];
        int last = -1;
        for (int round = 0; round <= nodes; round++) {
            last = relax(at, by);
            if (last < 0) {
                return List.of();
            }
        }
        return last < 0 ? List.of() : walk(last, by);
    }

    private int relax(long[] at, Arc[] by) {
        int last = -1;
        for (Arc arc : arcs) {
            if (at[arc.from()] + arc.seconds() > at[arc.to()]) {
                at[arc.to()] = at[arc.from()] + arc.seconds();
                by[arc.to()] = arc;
                last = arc.to();
            }
        }
        return last;
    }

    private static List<Integer> walk(int last, Arc[] by) {
        boolean[] seen = new boolean[by.length];
        int node = last;
        while (!seen[node]) {
            seen[node] = true;
            node = by[node].from();
        }
        List<Integer> circle = new ArrayList<>();
        int first = node;
        do {
            circle.add(node);
            node = by[node].from();
        } while (node != first);
        Collections.reverse(circle);
        return circle;
    }
}
