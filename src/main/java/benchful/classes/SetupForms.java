package benchful.classes;

import benchful.catalogue.Material;
import benchful.projects.MaterialLine;
import benchful.projects.Project;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.venues.Venue;
import benchful.web.forms.SpecForm;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

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
        StudioSpec studio = Studio.current();
        ClassSetup setup = ClassSetupBuilder.builder()
                .meetings(List.of(new ClassSetup.Meeting(date, LocalTime.of(13, 30), LocalTime.of(17, 0))))
                .breaks(List.of(new ClassSetup.Break(LocalTime.of(15, 15), Duration.ofMinutes(15))))
                .headcount(6).level(Objects.requireNonNullElse(studio.level(), project.toSpec().level())).demonstration(project.toSpec().sizes().get(0).name()).spares(1).currency(studio.coin()).build();
        return page(SpecForm.of(SetupRules.reader(project.toSpec()).written(setup), 0), CraftClass.of(project), null);
    }

    /** The same class again for other students, on the same day of the week three weeks ahead or more; nothing is stored yet. */
    ClassForm like(CraftClass other) {
        ProjectSpec project = other.project().toSpec();
        LocalDate soonest = LocalDate.now(clock).plusWeeks(3);
        long weeks = Math.max(1, -Math.floorDiv(ChronoUnit.DAYS.between(soonest, other.startsAt().toLocalDate()), 7));
        ClassSetup setup = other.setup().forOthers(sizes(project, other.setup()), weeks);
        return page(SpecForm.of(SetupRules.reader(project).written(setup), 0), CraftClass.of(other.project()), other.venue());
    }

    /** How many took which size, by name or not; those of whom nothing is said take the first again. */
    private static Map<String, Integer> sizes(ProjectSpec project, ClassSetup setup) {
        Map<String, Integer> taken = new LinkedHashMap<>();
        setup.students().forEach(s -> taken.merge(s.size() == null ? project.sizes().get(0).name() : s.size(), 1, Integer::sum));
        int open = setup.headcount() - setup.students().size();
        for (Size size : project.sizes()) {
            int some = Math.min(open, setup.sizes().getOrDefault(size.name(), 0));
            taken.merge(size.name(), some, Integer::sum);
            open -= some;
        }
        taken.values().removeIf(students -> students == 0);
        return taken;
    }

    ClassForm of(CraftClass existing) {
        return page(SetupRules.reader(existing.project().toSpec()).form(existing.storedSetup(), existing.version()), existing, existing.venue());
    }

    ClassForm page(SpecForm form, CraftClass target, Venue venue) {
        return new ClassForm(form, target, target.project().toSpec(), Venue.all(), venue,
                Material.names(),
                Material.variantWords(target.project().toSpec().materials().stream().map(MaterialLine::material).toList()));
    }
}
