package benchful.core.formula;

/** A formula that can't be worked out; the message is a sentence for its writer and quotes the formula. */
public final class FormulaException extends RuntimeException {
    public FormulaException(String formula, String fault) {
        super("In “%s”: %s".formatted(formula, fault));
    }
}
