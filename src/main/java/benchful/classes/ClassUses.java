package benchful.classes;

import benchful.catalogue.Material;
import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.Formats;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;

/** Projects and venues are used by the classes that are held with them, materials by those that name them beside their project. */
@ApplicationScoped
class ClassUses implements Uses {

    private static final int MOST = 30;

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        List<ClassLine> users = kind == Venue.class ? lines("v.id = :id", id) : kind == Project.class ? lines("p.id = :id", id)
                : kind == Material.class ? CraftClass.naming(name).stream().map(CraftClass::line).toList() : List.of();
        List<Use> uses = new ArrayList<>(users.stream().limit(MOST).map(ClassUses::use).toList());
        if (users.size() > MOST) {
            uses.add(new Use("and %d other classes".formatted(users.size() - MOST), "/classes"));
        }
        return uses;
    }

    private static List<ClassLine> lines(String which, Object id) {
        return CraftClass.lines(which + " order by c.startsAt desc, c.id").setParameter("id", id).getResultList();
    }

    private static Use use(ClassLine c) {
        return new Use("the class %s on %s".formatted(c.title(), Formats.words(c.startsAt())), "/classes/" + c.id());
    }
}
