package benchful.core.cutting;

import benchful.core.quantity.Sentence;

/** No plan: the sentence names the piece that does not fit and what would help. */
public record NotCuttable(Sentence reason) implements CuttingOutcome, SheetOutcome {}
