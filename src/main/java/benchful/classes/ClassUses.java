package benchful.classes;

import benchful.catalogue.Material;
import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.Formats;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Projects and venues are used by the classes that are held with them, materials by those that name them beside their project. */
@ApplicationScoped
class ClassUses implements Uses {

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        List<CraftClass> users = kind == Venue.class ? CraftClass.list("venue.id = ?1 order by startsAt, id", id)
                : kind == Material.class ? CraftClass.naming(name)
                : kind == Project.class ? CraftClass.list("project.id = ?1 order by startsAt, id", id) : List.of();
        return users.stream().map(ClassUses::use).toList();
    }

    private static Use use(CraftClass c) {
        return new Use("the class %s on %s".formatted(c.title(), Formats.words(c.startsAt())), "/classes/" + c.id());
    }
}
