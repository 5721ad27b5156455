package benchful.packing;

import benchful.catalogue.StockPiece;
import benchful.core.quantity.Sentence;
import benchful.plans.materials.CutOut;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.pictures.CuttingPicture;
import benchful.plans.pictures.SheetPicture;
import benchful.stock.CutMaterial;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One material that is cut for a class.
 *
 * @param materialId null where it is not in the catalogue
 * @param done when it was cut and what was left; null while it is not
 * @param out what cutting it now comes to
 */
@TemplateData
public record CuttingRow(MaterialsPlan.MaterialPlan material, Long materialId, Done done, CutOut out) {

    /** @param kept "2 × 35 cm"; empty where nothing was left */
    @TemplateData
    public record Done(LocalDateTime at, String opened, String kept) {}

    static CuttingRow of(MaterialsPlan.MaterialPlan material, Long materialId, CutMaterial cut, ZoneId zone) {
        Done done = cut == null ? null : new Done(LocalDateTime.ofInstant(cut.cutAt(), zone), words(cut.sizes().opened()), words(cut.sizes().kept()));
        return new CuttingRow(material, materialId, done, CutOut.of(material).orElseThrow());
    }

    public String opened() {
        return words(out.opened());
    }

    public String kept() {
        return words(out.kept());
    }

    public String proof() {
        return material.cutting() != null ? material.cutting().proof() : material.sheets().proof();
    }

    public List<Sentence> reasons() {
        return material.bought().reasons();
    }

    /** The pictures of the cutting, as on its print-out. */
    public List<String> pictures() {
        String title = "How %s is cut".formatted(material.name());
        if (material.cutting() != null) {
            return List.of(new CuttingPicture(material.cutting(), 760, 13, Formats::measured).svg("cut-" + materialId, title));
        }
        List<String> pictures = new ArrayList<>();
        SheetPicture.of(material.sheets(), 760, 13, Formats::words).forEach(p -> pictures.add(p.svg("cut-%d-%d".formatted(materialId, pictures.size()), title)));
        return pictures;
    }

    /** What stands for this plan in the form that books it. */
    public String seen() {
        return "%s|%s|%s".formatted(opened(), kept(), out.pieces());
    }

    private static String words(List<StockPiece> pieces) {
        Map<String, Long> alike = pieces.stream().map(CuttingRow::words)
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        return alike.entrySet().stream().map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " × " + e.getKey()).collect(Collectors.joining(", "));
    }

    private static String words(StockPiece piece) {
        return piece.width() == null ? Formats.measured(piece.length()) : Formats.words(piece.sheet());
    }
}
