package benchful.core.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How a pattern, given from one end, fills a strand. */
public enum Arrangement {
    /** Over and over from one end; the last repeat may be cut short. */
    REPEATED {
        @Override
        List<BeadRun> sequence(List<BeadRun> pattern, int beads) {
            List<BeadRun> single = singly(pattern);
            return IntStream.range(0, beads).mapToObj(i -> single.get(i % single.size())).toList();
        }
    },
    /** Over and over from both ends to the centre. */
    MIRRORED {
        @Override
        List<BeadRun> sequence(List<BeadRun> pattern, int beads) {
            List<BeadRun> single = singly(pattern);
            return IntStream.range(0, beads)
                    .mapToObj(i -> single.get(Math.min(i, beads - 1 - i) % single.size()))
                    .toList();
        }
    },
    /** Once from both ends to the centre run, the first run filling up the ends. */
    GRADUATED {
        @Override
        List<BeadRun> sequence(List<BeadRun> pattern, int beads) {
            List<BeadRun> outwards = outwards(pattern);
            int centre = Math.min(beads, last(pattern).count());
            List<BeadRun> side = IntStream.range(0, (beads - centre) / 2)
                    .mapToObj(i -> i < outwards.size() ? outwards.get(i) : pattern.get(0))
                    .toList();
            List<BeadRun> all = new ArrayList<>();
            for (int i = side.size() - 1; i >= 0; i--) {
                all.add(side.get(i));
            }
            for (int i = 0; i < centre; i++) {
                all.add(last(pattern));
            }
            all.addAll(side);
            return all;
        }

        @Override
        boolean allows(List<BeadRun> pattern, int beads) {
            int centre = last(pattern).count();
            return beads <= centre || (beads - centre) % 2 == 0;
        }
    };

    /** The beads in order; each element stands for one bead of its run. */
    abstract List<BeadRun> sequence(List<BeadRun> pattern, int beads);

    /** Whether a strand of so many beads keeps to this arrangement. */
    boolean allows(List<BeadRun> pattern, int beads) {
        return true;
    }

    /**
     * Whether the pattern is nowhere broken where it is seen: in the middle of a mirrored strand, or at the join of a closed row
     * that repeats. The last repeat of an open strand lies at the clasp, and may be cut short.
     *
     * @param closed true for a row that is closed to a ring
     */
    boolean isWhole(List<BeadRun> pattern, int beads, boolean closed) {
        if (this == MIRRORED) {
            return pattern.size() == 1 || middle(pattern, beads) == singly(pattern).get((beads - 1) / 2 % singly(pattern).size()).count();
        }
        return this == GRADUATED || !closed || beads % singly(pattern).size() == 0;
    }

    /** How many beads of one run lie about the centre of a mirrored strand. */
    private static int middle(List<BeadRun> pattern, int beads) {
        int centre = (beads - 1) / 2 % singly(pattern).size();
        int before = 0;
        for (BeadRun run : pattern) {
            if (centre < before + run.count()) {
                break;
            }
            before += run.count();
        }
        return 2 * (centre - before) + (beads % 2 == 1 ? 1 : 2);
    }

    private static List<BeadRun> singly(List<BeadRun> pattern) {
        List<BeadRun> single = new ArrayList<>();
        pattern.forEach(run -> IntStream.range(0, run.count()).forEach(i -> single.add(run)));
        return single;
    }

    private static List<BeadRun> outwards(List<BeadRun> pattern) {
        List<BeadRun> single = singly(pattern.subList(0, pattern.size() - 1));
        return IntStream.range(0, single.size()).mapToObj(i -> single.get(single.size() - 1 - i)).toList();
    }

    private static BeadRun last(List<BeadRun> pattern) {
        return pattern.get(pattern.size() - 1);
    }
}
