package benchful.stock;

/** Why stock moved, and whether that puts something on the shelf (+1), takes it away (-1) or may do either (0). */
public enum MovementKind {
    /** Bought and put on the shelf. */
    RECEIVED(1),
    /** Promised to a class (less is free) or released again (more is free); what lies on the shelf stays the same. */
    RESERVED(0),
    /** Taken from the shelf into a kit. */
    PACKED(-1),
    /** Taken from the shelf and used at the bench. */
    USED(-1),
    /** Broken or spoilt. */
    SPOILT(-1),
    /** Put back on the shelf. */
    RETURNED(1),
    /** What a review says was left of a class and is back on the shelf, or that put right. */
    LEFT_OVER(0),
    /** Cut off lengths or sheets for a class beyond its pieces, or that put right again. */
    CUT(0),
    /** What was left of a cut and is kept, or taken back where the cut was not made. */
    OFFCUT(0),
    /** Counted: the difference between what was found and what the movements said. */
    COUNTED(0);

    private final int sign;

    MovementKind(int sign) {
        this.sign = sign;
    }

    public int sign() {
        return sign;
    }

    /** True where it changes what lies on the shelf. */
    public boolean physical() {
        return this != RESERVED;
    }
}
