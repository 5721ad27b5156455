package benchful.stock;

/**
 * What is behind a movement of stock.
 *
 * @param note in the tutor's words; null for none
 * @param classId the class it was for; null for none
 * @param orderId the order it came with; null for none
 */
public record Cause(String note, Long classId, Long orderId) {
    public static final Cause NONE = new Cause(null, null, null);

    public static Cause note(String note) {
        return new Cause(note, null, null);
    }

    public static Cause ofClass(long classId, String note) {
        return new Cause(note, classId, null);
    }

    public static Cause ofOrder(long orderId, String note) {
        return new Cause(note, null, orderId);
    }
}
