package benchful.plans.materials.cutting;

import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;

/**
 * How one material is cut.
 *
 * @param lengths null where it is not cut to length or can't be
 * @param sheets null where it is not cut from sheet or can't be
 * @param use what becomes of what is on hand and of what is cut
 */
record Cutting(CuttingPlan lengths, SheetPlan sheets, CutUse use) {
    static Cutting of(CuttingPlan plan, CutUse use) {
        return new Cutting(plan, null, use);
    }

    static Cutting of(SheetPlan plan, CutUse use) {
        return new Cutting(null, plan, use);
    }
}
