package benchful.documents.lists;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What is cut alike is one pattern on the cutting sheet, whoever gets its pieces: a piece tells all that it is for. */
final class SamePatterns {
    private SamePatterns() {}

    static CuttingPlan alike(CuttingPlan plan) {
        Function<CutLength, Object> pattern = length -> List.of(length.length(), length.bought(), length.cuts().stream().map(cut -> List.of(cut.length(), cut.at())).toList());
        return new CuttingPlan(merged(plan.lengths(), pattern, length -> length.cuts().stream().map(CutLength.Cut::label).toList(), (length, labels) -> new CutLength(
                length.length(), length.bought(), IntStream.range(0, labels.size()).mapToObj(i -> relabelled(length.cuts().get(i), labels.get(i))).toList(), length.offcut(), length.kept())),
                plan.cost(), plan.bound(), plan.proof(), plan.reasons());
    }

    static SheetPlan alike(SheetPlan plan) {
        Function<CutSheet, Object> pattern = sheet -> List.of(sheet.size(), sheet.bought(), sheet.cuts(), sheet.pieces().stream().map(p -> List.of(p.size(), p.x(), p.y())).toList());
        return new SheetPlan(merged(plan.sheets(), pattern, sheet -> sheet.pieces().stream().map(CutSheet.Piece::label).toList(), (sheet, labels) -> new CutSheet(
                sheet.size(), sheet.bought(), IntStream.range(0, labels.size()).mapToObj(i -> relabelled(sheet.pieces().get(i), labels.get(i))).toList(), sheet.offcuts(), sheet.cuts())),
                plan.cost(), plan.bound(), plan.proof(), plan.reasons());
    }

    private static CutLength.Cut relabelled(CutLength.Cut cut, String label) {
        return new CutLength.Cut(label, cut.length(), cut.at());
    }

    private static CutSheet.Piece relabelled(CutSheet.Piece piece, String label) {
        return new CutSheet.Piece(label, piece.size(), piece.x(), piece.y());
    }

    /** In their order, each with the labels of all of its pattern. */
    private static <T> List<T> merged(List<T> all, Function<T, Object> pattern, Function<T, List<String>> labels, BiFunction<T, List<String>, T> relabelled) {
        Map<Object, List<T>> groups = all.stream().collect(Collectors.groupingBy(pattern, LinkedHashMap::new, Collectors.toList()));
        return groups.values().stream().flatMap(group -> group.stream().map(one -> relabelled.apply(one, IntStream.range(0, labels.apply(one).size())
                .mapToObj(i -> joined(group.stream().map(other -> labels.apply(other).get(i)).toList())).toList()))).toList();
    }

    private static String joined(List<String> labels) {
        List<String> different = labels.stream().filter(Objects::nonNull).distinct().toList();
        return different.isEmpty() ? null : String.join(" / ", different);
    }
}
