package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Takes the pieces of two or three filled sheets and fills sheets with them anew, larger pieces mostly before smaller ones, and goes
 * on from the new sheets unless they are worse; at first even where they are a little worse. Source: Shaw, "Using constraint
 * programming and local search methods to solve vehicle routing problems" (1998), large neighbourhoods. Always the same for the
 * same sheets.
 */
final class RepackedSheets {
    private static final int TRIES = 200_000;
    private static final double HEAT = 0.01;
    /** So that enough of the work is left for the bound. */
    private static final long MOST_STEPS = 60_000_000;

    private final SheetKinds kinds;
    private final Work work;
    private final Random random = new Random(1);
    private final int[] stocks;
    private FilledSheets now;
    private long steps;

    private RepackedSheets(SheetKinds kinds, FilledSheets start, Work work) {
        this.kinds = kinds;
        this.work = work;
        this.stocks = kinds.areas().stocks().toArray();
        this.now = start;
    }

    /**
     * No worse than the sheets that it begins with.
     *
     * @param aim nothing cheaper is looked for
     */
    static FilledSheets of(SheetKinds kinds, FilledSheets start, long aim, Work work) {
        return start.layouts().size() < 2 ? start : new RepackedSheets(kinds, start, work).repacked(aim);
    }

    private FilledSheets repacked(long aim) {
        FilledSheets best = now;
        for (int count = 0; count < TRIES && steps < MOST_STEPS && !work.isSpent() && best.cost() > aim; count++) {
            repack(HEAT * (1 - Math.max((double) count / TRIES, (double) steps / MOST_STEPS)));
            best = now.isNoWorseThan(best) ? now : best;
        }
        return best;
    }

    private void repack(double heat) {
        List<Layout> all = new ArrayList<>(now.layouts());
        Collections.shuffle(all, random);
        int taken = Math.min(all.size(), 2 + random.nextInt(2));
        List<Layout> kept = all.subList(taken, all.size());
        FilledSheets out = FilledSheets.of(kinds, all.subList(0, taken));
        SheetFill.Lot lot = SheetFill.Lot.of(kinds, out.layouts(), kept);
        spend(lot);
        SheetFill.fill(kinds, manner(), lot, order(lot)).map(layouts -> FilledSheets.of(kinds, layouts)).filter(found -> found.isTakenFor(out, heat, random))
                .ifPresent(found -> {
                    List<Layout> sheets = new ArrayList<>(found.layouts());
                    sheets.addAll(kept);
                    now = FilledSheets.of(kinds, sheets);
                });
    }

    private void spend(SheetFill.Lot lot) {
        long pieces = IntStream.of(lot.demand()).sum();
        work.spend(pieces * pieces);
        steps += pieces * pieces;
    }

    /** The larger first, now strictly, now hardly. */
    private List<Integer> order(SheetFill.Lot lot) {
        double disorder = random.nextDouble();
        double[] size = kinds.shapes().stream().mapToDouble(shape -> Math.sqrt((double) shape.area()) * Math.exp(disorder * random.nextGaussian())).toArray();
        return IntStream.range(0, size.length).filter(kind -> lot.demand()[kind] > 0).boxed().sorted(Comparator.comparingDouble(kind -> -size[kind])).toList();
    }

    private SheetFill.Manner manner() {
        boolean mostly = random.nextBoolean();
        BitSet wide = new BitSet();
        IntStream.range(0, kinds.shapes().size()).forEach(kind -> wide.set(kind, mostly ^ random.nextInt(5) == 0));
        return new SheetFill.Manner(stocks[random.nextInt(stocks.length)], wide);
    }
}
