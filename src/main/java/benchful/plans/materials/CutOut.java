package benchful.plans.materials;

import benchful.catalogue.StockPiece;
import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the cutting of a material comes to, once it is done.
 *
 * @param opened the lengths or sheets that are cut
 * @param kept the offcuts that are worth keeping
 * @param pieces how much goes into the pieces, in the material's unit
 */
public record CutOut(List<StockPiece> opened, List<StockPiece> kept, Quantity pieces) {
    public CutOut {
        opened = List.copyOf(opened);
        kept = List.copyOf(kept);
    }

    /** Nothing where the material is not cut. */
    public static Optional<CutOut> of(MaterialsPlan.MaterialPlan material) {
        return material.cutting() != null ? Optional.of(lengths(material)) : material.sheets() != null ? Optional.of(sheets(material)) : Optional.empty();
    }

    private static CutOut lengths(MaterialsPlan.MaterialPlan material) {
        List<CutLength> lengths = material.cutting().lengths();
        return new CutOut(lengths.stream().map(l -> new StockPiece(l.length(), null)).toList(),
                lengths.stream().filter(CutLength::kept).map(l -> new StockPiece(l.offcut(), null)).toList(),
                sum(material, lengths.stream().flatMap(l -> l.cuts().stream()).map(CutLength.Cut::length)));
    }

    private static CutOut sheets(MaterialsPlan.MaterialPlan material) {
        List<CutSheet> sheets = material.sheets().sheets();
        return new CutOut(sheets.stream().map(s -> StockPiece.of(s.size())).toList(),
                sheets.stream().flatMap(s -> s.offcuts().stream()).filter(CutSheet.Offcut::kept).map(o -> StockPiece.of(o.size())).toList(),
                sum(material, sheets.stream().flatMap(s -> s.pieces().stream()).map(p -> p.size().area())));
    }

    private static Quantity sum(MaterialsPlan.MaterialPlan material, Stream<Quantity> amounts) {
        return amounts.reduce(Quantity.zero(material.unit()), Quantity::plus);
    }
}
