package benchful.core.sizing;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
                : new Quantity(base.multiply(request.thickness().base()).multiply(requireNonNull(request.density()).base()).round(Quantity.PRECISION), Unit.G);
        Integer perSheet = request.sheetWidth() == null ? null : perSheet(request, request.sheetWidth(), requireNonNull(request.sheetHeight()));
        Integer sheets = perSheet == null || perSheet == 0 ? null : -Math.floorDiv(-request.pieces(), perSheet);
        return new Sheet(request.pieces(), area, mass, perSheet, sheets, reasons(request, area, perSheet, sheets));
    }

    private static int perSheet(SheetRequest r, Quantity width, Quantity height) {
        return Math.max(
                Math.multiplyExact(inRow(width, r.width(), r.kerf()), inRow(height, r.height(), r.kerf())),
                Math.multiplyExact(inRow(width, r.height(), r.kerf()), inRow(height, r.width(), r.kerf())));
    }

    private static int inRow(Quantity row, Quantity piece, Quantity kerf) {
        return row.base().add(kerf.base())
                .divide(piece.base().add(kerf.base()), 0, RoundingMode.FLOOR)
                .min(BigDecimal.valueOf(30_000)).intValueExact();
    }

    private static List<Sentence> reasons(SheetRequest r, Quantity area, @Nullable Integer perSheet, @Nullable Integer sheets) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(Sentence.of("%s of %s x %s are %s.", StrandWords.counted(r.pieces(), "piece"), r.width(), r.height(), area));
        if (perSheet == null || r.sheetWidth() == null || r.sheetHeight() == null) {
            return reasons;
        }
        reasons.add(sheets == null ? Sentence.of("No piece fits on a sheet of %s x %s.", r.sheetWidth(), r.sheetHeight())
                : Sentence.of("A sheet of %s x %s gives %s, so it takes %s.", r.sheetWidth(), r.sheetHeight(),
                        StrandWords.counted(perSheet, "piece"), StrandWords.counted(sheets, "sheet")));
        return reasons;
    }
}
