package benchful.orders;

/** How far an order has come. */
public enum OrderStatus {
    /** Written, and may still be changed. */
    DRAFT,
    SENT,
    PART_RECEIVED,
    RECEIVED,
    /** Nothing more is expected; what had come before stays on the shelf. */
    CANCELLED;

    /** True where something is still to come. */
    public boolean open() {
        return this == DRAFT || awaited();
    }

    /** True where the supplier has it and something is still to come. */
    public boolean awaited() {
        return this == SENT || this == PART_RECEIVED;
    }
}
