package benchful.core.cutting.sheets;

import benchful.core.cutting.patterns.ColumnGeneration;
import benchful.core.cutting.patterns.CuttingBound;
import benchful.core.cutting.patterns.CuttingProof;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the layouts whose new sheets cost least.
 *
 * <p>Filling one piece after the other and the bound of the areas settle many classes. Where they differ and all layouts can be
 * listed, {@link CuttingProof} settles it. Else they are filled in many other orders, a few at a time again, and the layouts and the bound of {@link ColumnGeneration} are taken, with the gap
 * known; its layouts are priced by {@link BestLayout}. Once the work is spent, the best that was found is taken.
 */
final class SheetSearch {
    private final SheetKinds kinds;
    private final Work work;

    private SheetSearch(SheetKinds kinds, Work work) {
        this.work = work;
        this.kinds = kinds;
    }

    /** @param bound no plan of cuts from edge to edge costs less */
    record Found(List<Layout> layouts, long bound) {}

    /** Empty where no plan was found: then nothing can be bought, and what is on hand does not reach or only by luck. */
    static Optional<Found> search(SheetKinds kinds, Work work) {
        Optional<List<Layout>> first = SheetFill.fill(kinds);
        long plain = kinds.areas().whole(CuttingBound.of(kinds.areas()));
        if (first.isPresent() && SheetFill.cost(kinds, first.get()) == plain) {
            return Optional.of(new Found(first.get(), plain));
        }
        SheetSearch search = new SheetSearch(kinds, work);
        return EveryLayout.of(kinds, work).map(all -> search.settle(first, all, plain)).orElseGet(() -> search.improve(first, plain));
    }

    private Optional<Found> settle(Optional<List<Layout>> first, List<Layout> all, long plain) {
        CuttingProof.Answer answer = CuttingProof.ask(kinds.areas(), patterns(all), work);
        return found(first, answer.plan().map(plan -> laid(plan, all)), Math.max(plain, kinds.areas().whole(answer.bound())));
    }

    private Optional<Found> improve(Optional<List<Layout>> filled, long plain) {
        Optional<List<Layout>> first = cheaper(filled, ShakenFill.of(kinds, plain, work).map(shaken -> RepackedSheets.of(kinds, shaken, plain, work).layouts()));
        List<Layout> known = new ArrayList<>(first.orElse(List.of()));
        Optional<BestLayout> pricing = BestLayout.of(kinds, work);
        if (pricing.isEmpty()) {
            return found(first, Optional.empty(), plain);
        }
        ColumnGeneration columns = new ColumnGeneration(kinds.areas(), patterns(known), pricing.get(), work);
        known.addAll(pricing.get().found());
        CuttingProof.Answer answer = CuttingProof.ask(kinds.areas(), patterns(known), work);
        return found(first, answer.plan().map(plan -> laid(plan, known)), Math.max(plain, kinds.areas().whole(columns.bound())));
    }

    private Optional<Found> found(Optional<List<Layout>> first, Optional<List<Layout>> second, long bound) {
        return cheaper(first, second).map(best -> new Found(best, Math.min(bound, SheetFill.cost(kinds, best))));
    }

    /** Of equal ones the first. */
    private Optional<List<Layout>> cheaper(Optional<List<Layout>> first, Optional<List<Layout>> second) {
        return Stream.of(first, second).flatMap(Optional::stream).min(Comparator.comparingLong(l -> SheetFill.cost(kinds, l)));
    }

    private static List<Pattern> patterns(List<Layout> layouts) {
        return layouts.stream().map(Layout::pattern).filter(p -> !p.isEmpty()).toList();
    }

    /** A pattern that was cut short lies as the whole one does, with pieces left out. */
    private static List<Layout> laid(List<Pattern> plan, List<Layout> known) {
        return plan.stream().map(p -> known.stream().filter(l -> l.sheet() == p.length() && EveryLayout.contains(l.counts(), p.counts())).findFirst()
                .map(l -> new Layout(p.length(), p.counts(), l.tree())).orElseThrow()).toList();
    }
}
