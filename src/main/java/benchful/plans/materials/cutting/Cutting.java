package benchful.plans.materials.cutting;

import benchful.core.buying.Want;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.core.quantity.Sentence;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one material is cut, and what must be bought for it.
 *
 * @param lengths null where it is not cut to length or can't be
 * @param sheets null where it is not cut from sheet or can't be
 * @param wants what to buy for it, by stock length or sheet
 * @param use what becomes of what is on hand and of what is cut; null where it can't be cut
 * @param problem why it can't be cut; null where it can
 */
record Cutting(CuttingPlan lengths, SheetPlan sheets, List<Want> wants, CutUse use, Sentence problem) {
    Cutting {
        wants = List.copyOf(wants);
    }

    static Cutting of(CuttingPlan plan, List<Want> wants, CutUse use) {
        return new Cutting(plan, null, wants, use, null);
    }

    static Cutting of(SheetPlan plan, List<Want> wants, CutUse use) {
        return new Cutting(null, plan, wants, use, null);
    }

    static Cutting none(Want unmet, Sentence problem) {
        return new Cutting(null, null, List.of(unmet), null, problem);
    }

    /** The same with more to buy. */
    Cutting with(Want more) {
        return new Cutting(lengths, sheets, Stream.concat(wants.stream(), Stream.of(more)).toList(), use, problem);
    }
}
