package benchful.home;

import benchful.catalogue.LowMaterial;
import benchful.catalogue.Material;
import benchful.classes.ClassFile;
import benchful.classes.ClassLine;
import benchful.classes.CraftClass;
import benchful.core.Progress;
import benchful.core.buying.Purchase;
import benchful.core.buying.SupplierOrder;
import benchful.orders.OrderStatus;
import benchful.orders.PurchaseOrder;
import benchful.packing.Packer;
import benchful.packing.PackingList;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.TermPlan;
import benchful.plans.stored.ClassTroubles;
import benchful.plans.stored.PlanService;
import benchful.plans.stored.TermService;
import benchful.projects.Project;
import benchful.reviews.Review;
import benchful.stock.StockLedger;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
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
    /** Of classes longer past nobody remembers how long a step took. */
    private static final int MOST_REVIEWS = 20;

    private final PlanService plans;
    private final TermService terms;
    private final ClassTroubles troubles;
    private final Packer packer;
    private final StockLedger ledger;
    private final Clock clock;

    Agenda(PlanService plans, TermService terms, ClassTroubles troubles, Packer packer, StockLedger ledger, Clock clock) {
        this.plans = plans;
        this.terms = terms;
        this.troubles = troubles;
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
    record Today(List<Task> tasks, List<ClassLine> coming, List<LowMaterial> low) {}

    /**
     * One thing to do.
     *
     * @param by the day it should be done; null for any day
     * @param late true where that day is past
     */
    @TemplateData
    record Task(LocalDate by, boolean late, String what, String link) {}

    @Transactional
    boolean nothingStored() {
        return Project.count() == 0 && Material.count() == 0 && CraftClass.count() == 0;
    }

    Today today() {
        Stored stored = QuarkusTransaction.requiringNew().call(this::stored);
        List<Task> tasks = new ArrayList<>(stored.tasks());
        TermService.Gathered read = terms.gathered(stored.coming(), List.of());
        stored.coming().forEach(c -> tasks.addAll(tried(c, read)));
        tasks.addAll(buying(stored.coming(), read));
        tasks.sort(Comparator.comparing(Task::by, Comparator.nullsFirst(Comparator.naturalOrder())));
        return new Today(tasks, stored.lines(), stored.low());
    }

    /** What is read at once, before anything is worked out. */
    private record Stored(List<CraftClass> coming, List<ClassLine> lines, List<Task> tasks, List<LowMaterial> low) {}

    private Stored stored() {
        LocalDateTime now = LocalDateTime.now(clock);
        List<Task> tasks = new ArrayList<>();
        PurchaseOrder.open().forEach(o -> tasks.add(tried(o)));
        Review.missing(now, MOST_REVIEWS).forEach(c -> tasks.add(review(c)));
        CraftClass.linesBefore(now, ledger.reservingClasses()).forEach(c -> tasks.add(release(c)));
        return new Stored(CraftClass.next(now, NEXT_CLASSES), CraftClass.linesFrom(now, NEXT_CLASSES), tasks, LowMaterial.all());
    }

    /** A class that can't be planned is a thing to do itself. */
    private List<Task> tried(CraftClass c, TermService.Gathered read) {
        Tried<List<Task>> tried = troubles.tried(c.line(), () -> tasks(c, read.file(c).orElseGet(() -> plans.file(c))));
        return tried instanceof Tried.Worked<List<Task>> worked ? worked.value()
                : List.of(new Task(null, false, ((Tried.Failed<List<Task>>) tried).trouble().sentence(), "/classes/" + c.id()));
    }

    private List<Task> tasks(CraftClass c, ClassFile file) {
        List<Task> tasks = new ArrayList<>();
        if (!plans.fits(file)) {
            tasks.add(new Task(null, false, "Make “%s” fit its hours".formatted(c.title()), "/classes/" + c.id() + "#fit"));
        }
        pack(c, plans.needs(file)).ifPresent(tasks::add);
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
    private List<Task> buying(List<CraftClass> coming, TermService.Gathered read) {
        if (coming.isEmpty()) {
            return List.of();
        }
        TermPlan plan = terms.plan(read, Progress.NONE).plan();
        String link = "/orders/new?" + coming.stream().map(c -> "class=" + c.id()).collect(Collectors.joining("&"));
        return plan.orders().stream().map(o -> new Task(o.orderBy(), o.late(), "Order from %s for %s".formatted(o.supplier(), buyers(plan, o)), link)).toList();
    }

    private static String buyers(TermPlan plan, SupplierOrder order) {
        Set<String> materials = order.purchases().stream().map(Purchase::material).collect(Collectors.toSet());
        return plan.materials().stream().filter(m -> materials.contains(m.name())).flatMap(m -> m.shares().stream())
                .map(TermPlan.Share::title).distinct().collect(Collectors.joining(", "));
    }

    private Task tried(PurchaseOrder o) {
        Tried<Task> tried = Tried.of(() -> order(o), failure -> Trouble.of("Order %d to %s".formatted(o.id(), o.supplier()), List.of(), failure));
        return tried instanceof Tried.Worked<Task> worked ? worked.value()
                : new Task(null, false, ((Tried.Failed<Task>) tried).trouble().sentence(), "/orders/" + o.id());
    }

    private Task order(PurchaseOrder o) {
        LocalDate today = LocalDate.now(clock);
        return o.status() == OrderStatus.DRAFT
                ? new Task(o.orderBy(), o.late(today), "Send order %d to %s".formatted(o.id(), o.supplier()), "/orders/" + o.id())
                : new Task(o.expectedOn(), o.expectedOn().isBefore(today), "Receive order %d from %s".formatted(o.id(), o.supplier()), "/orders/" + o.id());
    }

    /** Of a past class that still keeps others from what lies on the shelf. */
    private static Task release(ClassLine c) {
        return new Task(c.endsAt().toLocalDate(), false, "Release what “%s” did not use".formatted(c.title()), "/classes/" + c.id() + "/reservation");
    }

    private static Task review(ClassLine c) {
        return new Task(c.endsAt().toLocalDate(), false, "Review “%s”".formatted(c.title()), "/classes/" + c.id() + "/review");
    }
}
