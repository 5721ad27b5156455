package benchful.projects;

/** The ways a piece is worked out beyond plain formulas. */
public enum SizingKind {
    STRAND,
    BRACELET,
    COIL,
    POUR,
    SHEET
}
