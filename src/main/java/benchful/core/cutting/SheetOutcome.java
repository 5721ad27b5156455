package benchful.core.cutting;

/** A plan, or why there is none. */
public sealed interface SheetOutcome permits SheetPlan, NotCuttable {}
