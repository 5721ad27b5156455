package benchful.home;

import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.plans.ClassPlan;
import benchful.plans.PlanService;
import benchful.projects.Project;
import benchful.reviews.Review;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a tutor should do next: order, pack, change a plan that does not fit, review, refill. */
@ApplicationScoped
class Agenda {
    private static final int NEXT_CLASSES = 5;
    private static final int PACK_DAYS_BEFORE = 3;

    private final PlanService plans;
    private final Clock clock;

    Agenda(PlanService plans, Clock clock) {
        this.plans = plans;
        this.clock = clock;
    }

    /**
     * The first page's content.
     *
     * @param tasks what to do, most urgent first
     * @param coming the next classes
     * @param low materials below the least that should be on hand
     */
    @TemplateData
    record Today(List<Task> tasks, List<CraftClass> coming, List<Material> low) {}

    /**
     * One thing to do.
     *
     * @param by the day it should be done; null for any day
     * @param late true where that day is past
     */
    @TemplateData
    record Task(LocalDate by, boolean late, String what, String link) {}

    boolean nothingStored() {
        return Project.count() == 0 && Material.count() == 0 && CraftClass.count() == 0;
    }

    Today today() {
        List<CraftClass> coming = CraftClass.from(LocalDateTime.now(clock)).stream().limit(NEXT_CLASSES).toList();
        List<Task> tasks = new ArrayList<>();
        coming.forEach(c -> tasks.addAll(tasks(c)));
        CraftClass.before(LocalDateTime.now(clock)).stream().filter(c -> Review.of(c).isEmpty()).forEach(c -> tasks.add(review(c)));
        tasks.sort(Comparator.comparing(Task::by, Comparator.nullsFirst(Comparator.naturalOrder())));
        return new Today(tasks, coming, Material.all().stream().filter(Material::low).toList());
    }

    private List<Task> tasks(CraftClass c) {
        ClassPlan plan = plans.plan(plans.file(c));
        LocalDate today = LocalDate.now(clock);
        LocalDate day = c.startsAt().toLocalDate();
        List<Task> tasks = new ArrayList<>();
        if (plan.lesson() == null || !plan.lesson().fits()) {
            tasks.add(new Task(null, false, "Make “%s” fit its hours".formatted(c.title()), "/classes/" + c.id() + "#fit"));
        }
        plan.materials().orders().forEach(o -> tasks.add(new Task(o.orderBy(), o.late(),
                "Order from %s for “%s”".formatted(o.supplier(), c.title()), "/classes/" + c.id() + "#buy")));
        LocalDate pack = day.minusDays(PACK_DAYS_BEFORE);
        tasks.add(new Task(pack, pack.isBefore(today), "Pack %d kits for “%s”".formatted(plan.materials().kits().size(), c.title()),
                "/classes/" + c.id() + "#kits"));
        return tasks;
    }

    private static Task review(CraftClass c) {
        return new Task(c.endsAt().toLocalDate(), false, "Review “%s”".formatted(c.title()), "/classes/" + c.id() + "/review");
    }
}
