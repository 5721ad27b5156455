package benchful.projects;

import benchful.catalogue.Material;
import benchful.hazards.Hazard;
import benchful.web.Uses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;

/** Materials and hazards are used by the projects whose sheets name them. */
@ApplicationScoped
class ProjectUses implements Uses {
    private static final String NAMING_MATERIAL = """
            select * from project p where exists (
                select 1 from jsonb_path_query(p.sheet, '$.materials[*]', jsonb_build_object(), true) line
                where lower(line ->> 'material') = lower(:name) or exists (
                    select 1 from jsonb_path_query(line, '$.alternatives[*]', jsonb_build_object(), true) other where lower(other #>> cast(array[] as text[])) = lower(:name)))
            or exists (
                select 1 from jsonb_path_query(p.sheet, '$.sizes[*].takes[*]', jsonb_build_object(), true) taken
                where lower(:name) in (lower(taken ->> 'of'), lower(taken ->> 'use')))
            order by lower(p.name)""";

    /** On the project itself, its tools or its steps. */
    private static final String CARRYING_HAZARD = """
            select * from project p
            where jsonb_path_exists(p.sheet, '$.**.hazards[*] ? (@ == $id)', jsonb_build_object('id', cast(:name as text)))
            order by lower(p.name)""";

    private final EntityManager database;

    ProjectUses(EntityManager database) {
        this.database = database;
    }

    @Override
    public List<Use> of(Class<?> kind, Object id, String name) {
        List<Project> users = kind == Material.class ? naming(name) : kind == Hazard.class ? found(CARRYING_HAZARD, (String) id) : List.of();
        return users.stream().map(p -> new Use("the project " + p.name(), "/projects/" + p.id())).toList();
    }

    /** The projects with a line of this material, or where it can be chosen, by name. */
    List<Project> naming(String material) {
        return found(NAMING_MATERIAL, material);
    }

    private List<Project> found(String sql, String name) {
        return database.createNativeQuery(sql, Project.class).setParameter("name", name).getResultList();
    }
}
