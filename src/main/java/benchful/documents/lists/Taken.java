package benchful.documents.lists;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CutSheet;
import benchful.core.quantity.Counted;
import benchful.core.quantity.Quantity;
import benchful.documents.parts.Amounts;
import benchful.plans.materials.MaterialsPlan.MaterialPlan;
import benchful.web.Formats;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How much of a material is taken, in things that a hand can take: whole sheets and lengths as they are cut, not their sums. */
final class Taken {
    private final Amounts amounts;

    Taken(Amounts amounts) {
        this.amounts = amounts;
    }

    /** All that is brought: "3 of 300 × 200 mm", "9.4 m". */
    String brought(MaterialPlan material) {
        return material.sheets() == null ? amounts.words(material.need().total()) : sheets(material, sheet -> true);
    }

    /** What the shelf gives, with the material's name; empty for nothing. */
    String fromShelf(MaterialPlan material) {
        if (material.sheets() != null || material.cutting() != null) {
            String taken = material.sheets() == null ? lengths(material) : sheets(material, sheet -> !sheet.bought());
            return taken.isEmpty() ? "" : "%s %s, to be cut".formatted(taken, material.name());
        }
        Quantity need = material.bought().need();
        Quantity missing = material.bought().missing();
        String taken = amounts.words(need.minus(missing));
        return need.compareTo(missing) <= 0 ? "" : missing.signum() == 0 ? "%s %s".formatted(taken, material.name()) : "%s of %s %s".formatted(taken, amounts.words(need), material.name());
    }

    /** What will be left: "15.73 m", "0.39 sheets"; of sheets, whatever their size, how many they are worth. */
    String left(MaterialPlan material) {
        Quantity left = material.bought().leftover();
        Counted thing = left.unit().counted();
        if (left.signum() == 0) {
            return "none";
        }
        return thing == null || thing.sheet() == null || thing.runs() ? amounts.words(left) : "%s %s".formatted(Formats.number(left.amount(), 2), thing.word(left.amount()));
    }

    private String sheets(MaterialPlan material, Predicate<CutSheet> which) {
        return several(material.sheets().sheets().stream().filter(which).map(sheet -> amounts.words(sheet.size())));
    }

    private String lengths(MaterialPlan material) {
        return several(material.cutting().lengths().stream().filter(length -> !length.bought()).map(CutLength::length).map(amounts::words));
    }

    /** Equal ones once, the first first. */
    private static String several(Stream<String> sizes) {
        Map<String, Long> counts = sizes.collect(Collectors.groupingBy(size -> size, LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream().map(size -> Formats.several(Math.toIntExact(size.getValue()), size.getKey())).collect(Collectors.joining(" and "));
    }
}
