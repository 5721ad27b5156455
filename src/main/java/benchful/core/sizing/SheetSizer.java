package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Works out equal rectangles from sheet, laid in rows the one way or the other, whichever gives more; k pieces in a row of
 * length L need k x width + (k - 1) x kerf. Turning single pieces within a row is not tried.
 */
public final class SheetSizer {
    private SheetSizer() {}

    public static Sheet size(SheetRequest request) {
        BigDecimal each = request.width().base().multiply(request.height().base());
        BigDecimal base = each.multiply(BigDecimal.valueOf(request.pieces()));
        Quantity area = new Quantity(base.round(Quantity.PRECISION), Unit.MM2);
        Quantity mass = request.thickness() == null ? null
                : new Quantity(base.multiply(request.thickness().base()).multiply(request.density().base()).round(Quantity.PRECISION), Unit.G);
        Integer perSheet = request.sheetWidth() == null ? null : perSheet(request);
        Integer sheets = perSheet == null || perSheet == 0 ? null : -Math.floorDiv(-request.pieces(), perSheet);
        return new Sheet(request.pieces(), area, mass, perSheet, sheets, reasons(request, area, perSheet, sheets));
    }

    private static int perSheet(SheetRequest r) {
        return Math.max(
                Math.multiplyExact(inRow(r.sheetWidth(), r.width(), r.kerf()), inRow(r.sheetHeight(), r.height(), r.kerf())),
                Math.multiplyExact(inRow(r.sheetWidth(), r.height(), r.kerf()), inRow(r.sheetHeight(), r.width(), r.kerf())));
    }

    private static int inRow(Quantity row, Quantity piece, Quantity kerf) {
        return row.base().add(kerf.base())
                .divide(piece.base().add(kerf.base()), 0, RoundingMode.FLOOR)
                .min(BigDecimal.valueOf(30_000)).intValueExact();
    }

    private static List<Sentence> reasons(SheetRequest r, Quantity area, Integer perSheet, Integer sheets) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(Sentence.of("%s of %s x %s are %s.", StrandWords.counted(r.pieces(), "piece"), r.width(), r.height(), area));
        if (sheets != null) {
            reasons.add(Sentence.of("A sheet of %s x %s gives %s, so it takes %s.", r.sheetWidth(), r.sheetHeight(),
                    StrandWords.counted(perSheet, "piece"), StrandWords.counted(sheets, "sheet")));
        } else if (perSheet != null) {
            reasons.add(Sentence.of("No piece fits on a sheet of %s x %s.", r.sheetWidth(), r.sheetHeight()));
        }
        return reasons;
    }
}
