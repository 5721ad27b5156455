package benchful.catalogue;

import benchful.core.quantity.Quantity;
import benchful.web.Unusable;
import java.util.Objects;

/**
 * An amount as it was written into the database, so that 2 m comes back as 2 m and not as 2000 mm; never with
 * more digits than can be measured. It is read when it is
 * asked for: one that can't be read breaks what needs it, and no list in which it stands.
 */
public record StoredAmount(String text) {
    public StoredAmount {
        Objects.requireNonNull(text, "text");
    }

    /** Null for none. */
    public static StoredAmount of(Quantity amount) {
        return amount == null ? null : new StoredAmount(amount.measurable().toString());
    }

    /** Whether it is this amount. */
    boolean says(Quantity amount) {
        try {
            return Quantity.parse(text).equals(amount);
        } catch (IllegalArgumentException | ArithmeticException e) {
            return false;
        }
    }

    /**
     * @param amount null for none, which stays none
     * @param what   the thing it is an amount of, in words
     * @param path   of the page on which it is mended; null for none
     * @throws Unusable where it can't be read
     */
    public static Quantity read(StoredAmount amount, String what, String path) {
        try {
            return amount == null ? null : Quantity.parse(amount.text);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw Unusable.unreadable(what, path, e);
        }
    }
}
