package benchful.classes;

import benchful.catalogue.Material;
import benchful.web.Renamed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Lets what classes chose and what stands in for it follow when a material gets another name. */
@ApplicationScoped
class SetupRenames {
    void follow(@Observes Renamed renamed) {
        if (renamed.kind() == Material.class) {
            CraftClass.naming(renamed.from()).forEach(c -> c.plan(c.setup().renamed(renamed.from(), renamed.to()), c.venue()));
        }
    }
}
