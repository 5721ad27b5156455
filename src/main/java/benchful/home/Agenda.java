package benchful.home;

import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.orders.OrderStatus;
import benchful.orders.PurchaseOrder;
import benchful.packing.Packer;
import benchful.packing.PackingList;
import benchful.plans.ClassFile;
import benchful.plans.Fit;
import benchful.plans.PlanService;
import benchful.plans.Requirements;
import benchful.plans.TermPlan;
import benchful.plans.TermService;
import benchful.projects.Project;
import benchful.reviews.Review;
import benchful.stock.StockLedger;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a tutor should do next: order, send, receive, pack, change a plan that does not fit, review, refill. */
@ApplicationScoped
class Agenda {
    private static final int NEXT_CLASSES = 5;
    private static final int PACK_DAYS_BEFORE = 1;

    private final PlanService plans;
    private final Fit fit;
    private final TermService terms;
    private final Packer packer;
    private final StockLedger ledger;
    private final Clock clock;

    Agenda(PlanService plans, Fit fit, TermService terms, Packer packer, StockLedger ledger, Clock clock) {
        this.plans = plans;
        this.fit = fit;
        this.terms = terms;
        this.packer = packer;
        this.ledger = ledger;
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
        tasks.addAll(buying(coming));
        PurchaseOrder.open().forEach(o -> tasks.add(order(o)));
        List<CraftClass> past = CraftClass.before(LocalDateTime.now(clock));
        past.stream().filter(c -> Review.of(c).isEmpty()).forEach(c -> tasks.add(review(c)));
        tasks.addAll(releases(past));
        tasks.sort(Comparator.comparing(Task::by, Comparator.nullsFirst(Comparator.naturalOrder())));
        return new Today(tasks, coming, Material.all().stream().filter(Material::low).toList());
    }

    private List<Task> tasks(CraftClass c) {
        ClassFile file = plans.file(c);
        List<Task> tasks = new ArrayList<>();
        if (!fit.of(file)) {
            tasks.add(new Task(null, false, "Make “%s” fit its hours".formatted(c.title()), "/classes/" + c.id() + "#fit"));
        }
        pack(c, Requirements.of(file)).ifPresent(tasks::add);
        return tasks;
    }

    /** Until all is ticked. */
    private Optional<Task> pack(CraftClass c, Requirements required) {
        PackingList list = packer.list(c, required);
        LocalDate by = c.startsAt().toLocalDate().minusDays(PACK_DAYS_BEFORE);
        String what = list.ticked() == 0
                ? "Pack %d kits for “%s”".formatted(required.kits().size(), c.title())
                : "Pack for “%s”: %d of %d things are packed".formatted(c.title(), list.ticked(), list.items());
        return list.ticked() == list.items() ? Optional.empty()
                : Optional.of(new Task(by, by.isBefore(LocalDate.now(clock)), what, "/classes/" + c.id() + "/packing"));
    }

    /** What all the next classes miss that stands on no order yet. */
    private List<Task> buying(List<CraftClass> coming) {
        if (coming.isEmpty()) {
            return List.of();
        }
        TermPlan plan = terms.plan(coming, List.of());
        String link = "/orders/new?" + coming.stream().map(c -> "class=" + c.id()).collect(Collectors.joining("&"));
        return plan.orders().stream().map(o -> new Task(o.orderBy(), o.late(), "Order from %s for %s".formatted(o.supplier(), buyers(plan, o)), link)).toList();
    }

    private static String buyers(TermPlan plan, SupplierOrder order) {
        Set<String> materials = order.purchases().stream().map(Purchase::material).collect(Collectors.toSet());
        return plan.materials().stream().filter(m -> materials.contains(m.name())).flatMap(m -> m.shares().stream())
                .map(TermPlan.Share::title).distinct().collect(Collectors.joining(", "));
    }

    private Task order(PurchaseOrder o) {
        LocalDate today = LocalDate.now(clock);
        return o.status() == OrderStatus.DRAFT
                ? new Task(o.orderBy(), o.late(today), "Send order %d to %s".formatted(o.id(), o.supplier()), "/orders/" + o.id())
                : new Task(o.expectedOn(), o.expectedOn().isBefore(today), "Receive order %d from %s".formatted(o.id(), o.supplier()), "/orders/" + o.id());
    }

    /** Past classes that still keep others from what lies on the shelf. */
    private List<Task> releases(List<CraftClass> past) {
        Set<Long> reserving = ledger.reservingClasses();
        return past.stream().filter(c -> reserving.contains(c.id()))
                .map(c -> new Task(c.endsAt().toLocalDate(), false, "Release what “%s” did not use".formatted(c.title()), "/classes/" + c.id() + "/reservation"))
                .toList();
    }

    private static Task review(CraftClass c) {
        return new Task(c.endsAt().toLocalDate(), false, "Review “%s”".formatted(c.title()), "/classes/" + c.id() + "/review");
    }
}
