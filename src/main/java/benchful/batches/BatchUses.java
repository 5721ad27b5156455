package benchful.batches;

import benchful.projects.Project;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Projects are used by the kits that are made of them. */
@ApplicationScoped
class BatchUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        return kind != Project.class ? List.of() : KitBatch.<KitBatch>list("project.id = ?1 order by id", id).stream()
                .map(b -> new Use("the kits " + b.title(), "/batches/" + b.id())).toList();
    }
}
