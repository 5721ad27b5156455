package benchful.catalogue;

import benchful.core.Fault;
import benchful.web.Renamed;
import benchful.web.forms.SpecPost;
import jakarta.enterprise.event.Event;
import java.time.LocalDate;
import java.util.List;

/** A material that takes a sheet from its form. */
record MaterialTarget(Material material, CatalogueRules rules, Event<Renamed> renames, LocalDate today) implements SpecPost.Target<MaterialSpec> {

    @Override
    public long version() {
        return material == null ? 0 : material.version();
    }

    @Override
    public MaterialSpec stored() {
        return MaterialsPages.formSheet(material);
    }

    @Override
    public List<Fault> faults(MaterialSpec sheet) {
        return rules.faults(sheet, material);
    }

    @Override
    public String save(MaterialSpec sheet) {
        Material saved = material;
        if (saved == null) {
            saved = Material.stored(sheet, MaterialTarget::supplier, false, today);
        } else {
            String before = saved.name();
            saved.replace(sheet, MaterialTarget::supplier, today);
            tell(before, saved.name());
            renameVariants(saved, before);
        }
        Material.flush();
        return "/materials/" + saved.id();
    }

    /** Variants carry the name of their material. */
    private void renameVariants(Material renamed, String before) {
        renamed.variants().stream().filter(v -> v.name.startsWith(before + ", ") && !before.equals(renamed.name)).forEach(v -> {
            String old = v.name;
            v.name = renamed.name + old.substring(before.length());
            tell(old, v.name);
        });
    }

    private void tell(String before, String after) {
        if (!before.equals(after)) {
            renames.fire(new Renamed(Material.class, before, after));
        }
    }

    private static Supplier supplier(String name) {
        return Supplier.byName(name).orElseThrow();
    }
}
