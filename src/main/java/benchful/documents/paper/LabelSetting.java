package benchful.documents.paper;

/**
 * Which labels are printed, and where they are stuck on their sheet.
 *
 * @param start position of the first label on the first page, from 1 along the rows: a sheet begun yesterday is used up
 * @param right how far all labels are moved right, against a printer that pulls paper in askew [mm]
 * @param down how far they are moved down [mm]
 */
public record LabelSetting(LabelStock sheet, int start, double right, double down, LabelKind kind) {
    private static final double FARTHEST = 10;

    public LabelSetting {
        if (start < 1 || start > sheet.perPage()) {
            throw new IllegalArgumentException("The first label's position is from 1 to %d on this sheet, not %d.".formatted(sheet.perPage(), start));
        }
        if (!(Math.abs(right) <= FARTHEST && Math.abs(down) <= FARTHEST)) {
            throw new IllegalArgumentException("Labels are moved by at most 10 mm.");
        }
    }

    public static LabelSetting of(LabelStock sheet) {
        return new LabelSetting(sheet, 1, 0, 0, LabelKind.KITS);
    }
}
