package benchful.bin;

import benchful.web.Pages;
import benchful.web.Uses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** How anything is removed: into the bin, with a way back on the page that follows. What something else uses stays, and a page names its uses. */
@ApplicationScoped
public class Removals {
    private final Instance<Uses> features;
    private final Bin bin;

    Removals(Instance<Uses> features, Bin bin) {
        this.features = features;
        this.bin = bin;
    }

    @CheckedTemplate(basePath = "bin")
    static class Templates {
        static native TemplateInstance used(String name, String address, List<Uses.Use> uses);

        private Templates() {}
    }

    /** Where something is used, over all features. */
    public List<Uses.Use> uses(Class<?> kind, Object id, String name) {
        return features.stream().flatMap(f -> f.of(kind, id, name).stream()).toList();
    }

    /**
     * Removes what nothing else uses.
     *
     * @param kind the entity's class, by which its users are asked
     * @param after where to go when it is removed
     */
    @Transactional
    public Response removeUnused(Class<?> kind, Object id, Thing thing, String after, Runnable removal) {
        List<Uses.Use> uses = uses(kind, id, thing.name());
        return uses.isEmpty() ? remove(thing, after, removal) : Pages.stale(Templates.used(thing.name(), thing.address(), uses));
    }

    /** Removes what nothing else can use. */
    @Transactional
    public Response remove(Thing thing, String after, Runnable removal) {
        return Pages.seeOther(Undo.offeredAt(after, bin.keep(thing, removal)));
    }
}
