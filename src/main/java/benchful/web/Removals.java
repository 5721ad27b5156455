package benchful.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** Removes what nothing else uses; what is used stays, and a page names its uses. */
@ApplicationScoped
public class Removals {
    private final Instance<Uses> features;

    Removals(Instance<Uses> features) {
        this.features = features;
    }

    @CheckedTemplate(basePath = "web")
    static class Templates {
        static native TemplateInstance used(String name, String address, List<Uses.Use> uses);

        private Templates() {}
    }

    /** Where something is used, over all features. */
    public List<Uses.Use> uses(Class<?> kind, Object id, String name) {
        return features.stream().flatMap(f -> f.of(kind, id, name).stream()).toList();
    }

    /**
     * @param address of the thing's own page
     * @param after where to go when it is removed
     */
    public Response remove(Class<?> kind, Object id, String name, String address, String after, Runnable removal) {
        List<Uses.Use> uses = uses(kind, id, name);
        if (!uses.isEmpty()) {
            return Pages.stale(Templates.used(name, address, uses));
        }
        removal.run();
        return Pages.seeOther(after);
    }
}
