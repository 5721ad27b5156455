package benchful.hazards;

import benchful.catalogue.Material;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A hazard is used by the materials that carry it. */
@ApplicationScoped
class MaterialUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        return kind == Hazard.class ? Material.carrying((String) id).stream().map(MaterialUses::use).toList() : List.of();
    }

    private static Use use(Material material) {
        return new Use("the material " + material.name(), "/materials/" + material.id());
    }
}
