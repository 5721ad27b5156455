package benchful.core.cutting;

import benchful.core.quantity.Sentence;
import java.util.Optional;

/** No plan: the sentence names the piece that does not fit and what would help. */
public record NotCuttable(Sentence reason) implements CuttingOutcome, SheetOutcome {
    /** Where there are more pieces than anybody could follow on a plan. */
    public static Optional<NotCuttable> ifMore(long pieces, int most) {
        return pieces <= most ? Optional.empty() : Optional.of(new NotCuttable(Sentence.of(
                "%s pieces are more than a cutting plan can show, which are %s. Give the amount for all pieces together and leave their number out.", pieces, most)));
    }
}
