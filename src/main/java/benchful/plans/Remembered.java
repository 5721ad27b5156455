package benchful.plans;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.Picks;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.RestPlacer;
import benchful.core.lesson.risk.Promised;
import benchful.core.lesson.risk.StepLengths;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.TermPlan;
import benchful.plans.materials.TermPlanner;
import benchful.plans.materials.TermRequest;
import benchful.plans.materials.kits.ClassNeeds;
import benchful.projects.ProjectSpec;
import benchful.venues.VenueSpec;
import benchful.web.tasks.Asker;
import benchful.web.tasks.Memory;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The parts of plans that take time to work out, each remembered by just what it depends on: a movement of stock changes what is
 * bought and no lesson, another price no needs. All pages, print-outs and the first page ask here.
 */
@ApplicationScoped
public class Remembered {
    private final LessonPlanner lessons;
    private final Memory memory;

    Remembered(LessonPlanner lessons, Memory memory) {
        this.lessons = lessons;
        this.memory = memory;
    }

    private record RequestQuestion(ProjectSpec project, ClassSetup setup, VenueSpec venue) {}

    private record LessonQuestion(LessonRequest request) {}

    private record PromiseQuestion(LessonRequest request, LessonPlan plan) {}

    private record LengthsQuestion(LessonRequest request) {}

    private record MaterialsQuestion(ClassFile file, LocalDate today) {}

    private record NeedsQuestion(ProjectSpec project, ClassSetup setup, List<MaterialSpec> materials, Set<String> cut) {}

    private record TermQuestion(List<Bought> parts, CatalogueSpec catalogue, LocalDate today) {
        private record Bought(String title, ProjectSpec project, ClassSetup setup) {}
    }

    /** What the lesson engine is asked for a class: its pieces are sized first, and breaks are placed by its rule in the plan itself. */
    LessonRequest request(ClassFile file) {
        ClassFile asked = file.withoutContacts();
        RestPlacer.Rested roughly = memory.of(new RequestQuestion(asked.project(), asked.setup(), asked.venue()), r -> 2 * r.fixed().steps().size(), () -> Rests.roughly(asked));
        return Rests.wholly(asked, roughly, this::plan);
    }

    private Optional<LessonPlan> plan(LessonRequest request) {
        return lesson(request) instanceof Planned planned ? Optional.of(promised(request, planned.plan()).plan()) : Optional.empty();
    }

    LessonOutcome lesson(LessonRequest request) {
        return memory.of(new LessonQuestion(request), Remembered::parts, () -> {
            Asker.check();
            return lessons.plan(request);
        });
    }

    /** The times to promise for an order of steps. */
    Promised promised(LessonRequest request, LessonPlan order) {
        return memory.of(new PromiseQuestion(request, order), promised -> 4 * order.blocks().size(), () -> Promised.of(request, order, Asker::check));
    }

    /** How long each step usually takes such a class; nothing where it can't be planned. */
    List<StepLengths.Length> lengths(LessonRequest request) {
        LessonOutcome order = lesson(request);
        return order instanceof Planned planned ? memory.of(new LengthsQuestion(request), lengths -> 10 * lengths.size(), () -> new StepLengths(request, planned.plan()).usual()) : List.of();
    }

    /** @param today to tell what can't arrive in time any more; null to leave that open */
    public MaterialsPlan materials(ClassFile file, LocalDate today) {
        return memory.of(new MaterialsQuestion(file.withoutContacts(), today), Remembered::parts, () -> MaterialsPlanner.plan(file, today, this::needs));
    }

    /** What a class takes, before stock and suppliers are asked. */
    public Requirements needs(ClassFile file) {
        return needs(file, ClassNeeds.cut(file));
    }

    /** @param cut the materials that are cut to length, here or for another class that is bought for together */
    public Requirements needs(ClassFile file, Set<String> cut) {
        Set<String> names = new HashSet<>(Picks.names(file.project(), file.setup(), file.materials()));
        List<MaterialSpec> materials = file.materials().stream().filter(m -> names.contains(m.name())).map(MaterialSpec::unstocked).toList();
        Set<String> own = new HashSet<>(names);
        own.retainAll(cut);
        ClassFile asked = new ClassFile(file.project(), file.setup(), null, materials, List.of());
        return memory.of(new NeedsQuestion(file.project(), file.setup().withoutContacts(), materials, own), Remembered::parts, () -> Requirements.of(asked, own));
    }

    public TermPlan term(TermRequest request, LocalDate today) {
        return memory.of(question(request, today), Remembered::parts, () -> TermPlanner.plan(request, today, this::needs));
    }

    /** Whether the answer is there already. */
    boolean knows(TermRequest request, LocalDate today) {
        return memory.known(question(request, today)).isPresent();
    }

    private static TermQuestion question(TermRequest request, LocalDate today) {
        return new TermQuestion(request.parts().stream().map(p -> new TermQuestion.Bought(p.title(), p.file().project(), p.file().setup())).toList(), request.catalogue(), today);
    }

    private static int parts(LessonOutcome lesson) {
        return lesson instanceof Planned planned ? 2 * planned.plan().blocks().size() : ((Contradiction) lesson).conflicts().size();
    }

    private static int parts(Requirements needs) {
        return needs.kits().stream().mapToInt(k -> 1 + k.contents().size()).sum() + needs.needs().values().stream().mapToInt(n -> 1 + n.cuts().size()).sum();
    }

    private static int parts(MaterialsPlan plan) {
        return plan.kits().stream().mapToInt(k -> 1 + k.contents().size()).sum() + plan.materials().stream().mapToInt(m -> 4 + m.need().cuts().size()).sum();
    }

    private static int parts(TermPlan plan) {
        return plan.materials().stream().mapToInt(m -> 4 + m.shares().size() + m.need().cuts().size()).sum();
    }
}
