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
    private final Cooling cooling;
    private final Random random = new Random(1);
    private final int[] stocks;
    private FilledSheets now;

    private RepackedSheets(SheetKinds kinds, FilledSheets start, Work work) {
        this.kinds = kinds;
        this.cooling = new Cooling(TRIES, MOST_STEPS, HEAT, work);
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
        while (cooling.goesOn() && best.cost() > aim) {
            repack(cooling.next());
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
        cooling.spend(IntStream.of(lot.demand()).sum());
        SheetFill.fill(kinds, manner(), lot, order(lot)).map(layouts -> FilledSheets.of(kinds, layouts)).filter(found -> found.isTakenFor(out, heat, random))
                .ifPresent(found -> {
                    List<Layout> sheets = new ArrayList<>(found.layouts());
                    sheets.addAll(kept);
                    now = FilledSheets.of(kinds, sheets);
                });
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
