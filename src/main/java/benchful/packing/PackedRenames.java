package benchful.packing;

import benchful.catalogue.Material;
import benchful.web.Renamed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Lets ticks follow when a material gets another name. */
@ApplicationScoped
class PackedRenames {

    void follow(@Observes Renamed renamed) {
        if (renamed.kind() == Material.class) {
            PackedContent.update("material = ?1 where lower(material) = lower(?2)", renamed.to(), renamed.from());
        }
    }
}
