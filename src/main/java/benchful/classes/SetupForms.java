package benchful.classes;

import benchful.catalogue.Material;
import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.SheetForm;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;

/** Fills the form of a class. */
@ApplicationScoped
class SetupForms {
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
        return page(SheetForm.of(SetupRules.reader(project.toSheet()).written(setup), 0), CraftClass.of(project), null);
    }

    ClassForm of(CraftClass existing) {
        return page(SheetForm.of(SetupRules.reader(existing.project().toSheet()).written(existing.setup()), existing.version()), existing, existing.venue());
    }

    ClassForm page(SheetForm form, CraftClass target, Venue venue) {
        return new ClassForm(form, target, target.project().toSheet(), Venue.all(), venue,
                Material.all().stream().map(Material::name).toList());
    }
}
