package benchful.reviews;

import benchful.catalogue.Material;
import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import benchful.web.forms.JsonPointers;
import benchful.web.forms.SpecPost;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A review that takes a sheet from its form. */
record ReviewTarget(Review review) implements SpecPost.Target<ReviewSpec> {

    @Override
    public long version() {
        return review.version();
    }

    @Override
    public ReviewSpec stored() {
        return review.sheet();
    }

    /** What is written of a material must be counted as it is; of one that left the catalogue nothing is known. */
    @Override
    public List<Fault> faults(ReviewSpec sheet) {
        List<Fault> faults = new ArrayList<>();
        Map<String, Unit> ways = ways(sheet);
        sheet.sized(ways).materials().forEach((name, note) -> {
            Map<String, Quantity> amounts = new LinkedHashMap<>();
            amounts.put("/left", note.left());
            amounts.put("/broken", note.broken());
            amounts.put("/missing", note.missing());
            amounts.forEach((field, amount) -> {
                if (amount != null && ways.containsKey(name) && !amount.dimension().equals(ways.get(name).dimension())) {
                    faults.add(new Fault(JsonPointers.below("/materials", name) + field, "“%s” is %s, but “%s” is counted in %s. Give such an amount.".formatted(
                            amount, amount.dimension().words(), name, Formats.words(ways.get(name)))));
                }
            });
        });
        return faults;
    }

    private static Map<String, Unit> ways(ReviewSpec sheet) {
        return Material.named(sheet.materials().keySet()).stream().collect(Collectors.toMap(Material::name, Material::unit));
    }

    @Override
    public String save(ReviewSpec sheet) {
        review.replace(sheet.sized(ways(sheet)));
        review.persistAndFlush();
        return "/classes/" + review.craftClass().id() + "/review";
    }
}
