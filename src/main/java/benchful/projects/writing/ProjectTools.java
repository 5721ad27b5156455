package benchful.projects.writing;

import benchful.venues.ToolNaming;
import benchful.web.Uses.Use;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;

/** The tools that projects ask for, also those of projects that can't be read whole. */
@ApplicationScoped
class ProjectTools implements ToolNaming {
    private static final String TOOLS = """
            select t ->> 'name', p.name, p.id from project p cross join lateral
                jsonb_array_elements(case jsonb_typeof(p.sheet -> 'tools') when 'array' then p.sheet -> 'tools' else jsonb_build_array() end) t
            where t ->> 'name' is not null order by lower(p.name)""";

    private final EntityManager database;

    ProjectTools(EntityManager database) {
        this.database = database;
    }

    @Override
    public Map<String, List<Use>> tools() {
        return ToolNaming.tools(database.createNativeQuery(TOOLS), "/projects/");
    }
}
