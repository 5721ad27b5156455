package benchful.core.cutting;

/** How a wish to cut ends: with a plan, or with pieces that no length can give. */
public sealed interface CuttingOutcome permits CuttingPlan, NotCuttable {}
