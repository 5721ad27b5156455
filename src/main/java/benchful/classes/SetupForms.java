package benchful.classes;

import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.FormTree;
import benchful.web.SheetForm;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;

/** Fills and reads the form of a class. */
@ApplicationScoped
class SetupForms {
    private static final String SCHEMA = "setup-1";

    private final Clock clock;

    SetupForms(Clock clock) {
        this.clock = clock;
    }

    /** A class three weeks ahead, six students, an afternoon: the tutor changes what differs. */
    ClassForm fresh(Project project) {
        LocalDate date = LocalDate.now(clock).plusWeeks(3);
        ClassSetup setup = new ClassSetup(null,
                List.of(new ClassSetup.Meeting(date, LocalTime.of(13, 30), LocalTime.of(17, 0))),
                6, project.toSheet().level(), Map.of(), List.of(), project.toSheet().sizes().get(0).name(), 1, 0, 1, false, null,
                List.of(new ClassSetup.Break(LocalTime.of(15, 15), Duration.ofMinutes(15))), List.of(), Map.of(), "GBP", null, null, null);
        return page(SheetForm.of(written(setup), 0), CraftClass.of(project), null);
    }

    ClassForm of(CraftClass existing) {
        return page(SheetForm.of(written(existing.setup()), existing.version()), existing, existing.venue());
    }

    ClassForm page(SheetForm form, CraftClass target, Venue venue) {
        return new ClassForm(form, target, target.project().toSheet(), Venue.all(), venue);
    }

    ObjectNode tree(MultivaluedMap<String, String> form) {
        ObjectNode tree = new FormTree(reader(null).schema()).of(form);
        form.getOrDefault("ahead", List.of()).forEach(step -> tree.withArray("prepared_ahead").add(step));
        return tree;
    }

    SheetReader.Reading<ClassSetup> read(JsonNode tree, Project project) {
        return reader(project).tree(tree);
    }

    JsonNode written(ClassSetup setup) {
        return reader(null).written(setup);
    }

    private static SheetReader<ClassSetup> reader(Project project) {
        return new SheetReader<>(ClassSetup.class, SCHEMA, setup -> SetupRules.check(setup, project.toSheet()));
    }
}
