package benchful.venues;

import benchful.web.Uses.Use;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;

/** The tools of the rooms, also of those that can't be read whole. */
@ApplicationScoped
class VenueTools implements ToolNaming {
    private static final String TOOLS = """
            select t.key, v.name || ' (' || t.value || ')', v.id from venue v cross join lateral
                jsonb_each_text(case jsonb_typeof(v.sheet -> 'tools') when 'object' then v.sheet -> 'tools' else jsonb_build_object() end) t
            order by lower(v.name)""";

    private final EntityManager database;

    VenueTools(EntityManager database) {
        this.database = database;
    }

    @Override
    public Map<String, List<Use>> tools() {
        return ToolNaming.tools(database.createNativeQuery(TOOLS), "/venues/");
    }
}
