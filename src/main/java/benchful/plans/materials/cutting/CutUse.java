package benchful.plans.materials.cutting;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What becomes of what is cut, in the material's unit.
 *
 * @param onHand all that there was
 * @param opened of what was on hand, what is cut
 * @param lost by the cuts
 * @param scrap offcuts too small to keep
 * @param kept offcuts worth keeping
 * @param keptOfBought those of them that come from what is bought
 * @param taken how what is on hand was taken; null where none is
 * @param offcuts which are kept; null for none
 * @param made what is cut from what, and whether that is proven
 */
record CutUse(Quantity onHand, Quantity opened, Quantity lost, Quantity scrap, Quantity kept, Quantity keptOfBought,
        Sentence taken, Sentence offcuts, List<Sentence> made) {

    static CutUse of(CuttingPlan plan, List<Quantity> onHand, Unit unit) {
        Stream<Quantity> cut = plan.lengths().stream().map(l -> l.cuts().stream().map(CutLength.Cut::length).reduce(l.length().minus(l.offcut()), Quantity::minus));
        Quantity all = sum(onHand.stream(), unit);
        List<Quantity> kept = lengths(plan, CutLength::kept).map(CutLength::offcut).sorted().toList();
        return new CutUse(all, sum(lengths(plan, l -> !l.bought()).map(CutLength::length), unit), sum(cut, unit),
                sum(lengths(plan, l -> !l.kept()).map(CutLength::offcut), unit), sum(kept.stream(), unit),
                sum(lengths(plan, l -> l.kept() && l.bought()).map(CutLength::offcut), unit),
                all.signum() == 0 ? null : Sentence.of("%s are on hand, taken as " + joined(onHand, "%s") + ".", Stream.concat(Stream.of(all), distinct(onHand)).toArray()),
                kept.isEmpty() ? null : Sentence.of("Offcuts to keep: " + joined(kept, "%s") + ".", distinct(kept).toArray()), made(plan.reasons(), plan.proof()));
    }

    private static Stream<CutLength> lengths(CuttingPlan plan, Predicate<CutLength> which) {
        return plan.lengths().stream().filter(which);
    }

    /** @param all that is on hand, whether its sheets are known or not */
    static CutUse of(SheetPlan plan, List<Extent> onHand, Quantity all) {
        Unit unit = all.unit();
        Quantity left = sum(offcuts(plan, s -> true, o -> true), unit);
        Quantity pieces = sum(plan.sheets().stream().flatMap(s -> s.pieces().stream()).map(p -> p.size().area()), unit);
        Quantity cut = sum(plan.sheets().stream().map(s -> s.size().area()), unit);
        Quantity kept = sum(offcuts(plan, s -> true, CutSheet.Offcut::kept), unit);
        List<Extent> keep = plan.sheets().stream().flatMap(s -> s.offcuts().stream()).filter(CutSheet.Offcut::kept).map(CutSheet.Offcut::size).toList();
        return new CutUse(all, sum(plan.sheets().stream().filter(s -> !s.bought()).map(s -> s.size().area()), unit), cut.minus(pieces).minus(left),
                left.minus(kept), kept, sum(offcuts(plan, CutSheet::bought, CutSheet.Offcut::kept), unit),
                all.signum() == 0 ? null : Sentence.of("%s are on hand, taken as " + (onHand.isEmpty() ? "no whole sheet" : joined(onHand, "%s x %s")) + ".",
                        Stream.concat(Stream.of(all), edges(onHand)).toArray()),
                keep.isEmpty() ? null : Sentence.of("Offcuts to keep: " + joined(keep, "%s x %s") + ".", edges(keep).toArray()), made(plan.reasons(), plan.proof()));
    }

    private static Stream<Quantity> offcuts(SheetPlan plan, Predicate<CutSheet> from, Predicate<CutSheet.Offcut> which) {
        return plan.sheets().stream().filter(from).flatMap(s -> s.offcuts().stream()).filter(which).map(o -> o.size().area());
    }

    private static Stream<Quantity> edges(List<Extent> sizes) {
        return sizes.stream().distinct().flatMap(e -> Stream.of(e.length(), e.width()));
    }

    private static List<Sentence> made(List<Sentence> reasons, String proof) {
        List<Sentence> made = new ArrayList<>(reasons);
        made.add(Sentence.of("%s", proof));
        return made;
    }

    /** "2 x %s and 1 x %s": equal ones together, in the order they are first met. */
    private static <T> String joined(List<T> all, String each) {
        return all.stream().distinct().map(one -> all.stream().filter(one::equals).count() + " x " + each).collect(Collectors.joining(" and "));
    }

    private static Stream<Quantity> distinct(List<Quantity> lengths) {
        return lengths.stream().distinct();
    }

    private static Quantity sum(Stream<Quantity> quantities, Unit unit) {
        return quantities.reduce(Quantity.zero(unit), Quantity::plus);
    }
}
