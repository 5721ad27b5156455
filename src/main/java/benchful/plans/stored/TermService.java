package benchful.plans.stored;

import benchful.catalogue.CatalogueSpec;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.classes.Picks;
import benchful.core.Progress;
import benchful.plans.Remembered;
import benchful.plans.materials.TermPlan;
import benchful.plans.materials.TermRequest;
import benchful.plans.materials.cutting.ShoppingPlanner;
import benchful.plans.materials.kits.ClassNeeds;
import benchful.web.Trouble;
import benchful.web.Unusable;
import benchful.web.tasks.Tried;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Gathers what stored classes and other kits are bought for together, and plans it. What can't be planned is left out and named. */
@ApplicationScoped
public class TermService {
    private final AvailableStock shelf;
    private final ClassTroubles troubles;
    private final Remembered remembered;
    private final Clock clock;

    TermService(AvailableStock shelf, ClassTroubles troubles, Remembered remembered, Clock clock) {
        this.shelf = shelf;
        this.remembered = remembered;
        this.troubles = troubles;
        this.clock = clock;
    }

    /**
     * What is bought together.
     *
     * @param plan    for all that could be planned
     * @param leftOut what could not
     */
    public record Together(TermPlan plan, List<Trouble> leftOut) {
        public Together {
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * One that asks to be bought for.
     *
     * @param classId null for kits without a lesson
     * @param trouble words its failure
     */
    record Asking(Long classId, TermRequest.Part part, Function<Throwable, Trouble> trouble) {
        List<String> materials() {
            return Picks.names(part.file().project(), part.file().setup());
        }

        Asking with(CatalogueSpec catalogue) {
            return new Asking(classId, new TermRequest.Part(part.title(), new ClassFile(part.file().project(), part.file().setup(), null,
                    catalogue.materials(), catalogue.suppliers())), trouble);
        }

        boolean fails(Unusable at) {
            return materials().stream().map(ShoppingPlanner::words).anyMatch(at.what()::equals);
        }
    }

    /**
     * All that is read before anything is worked out.
     *
     * @param question what decides the plan
     * @param leftOut  what can't even be read
     */
    public record Gathered(List<Asking> asking, AvailableStock.Specs sheets, TermRequest question, List<Trouble> leftOut) {
        public int size() {
            return asking.size();
        }

        /**
         * A class as it was read, in its room, with what is on the shelf for all that are bought for together.
         *
         * @return nothing where it can't be read
         * @throws Unusable where its room or one of its materials can't be used
         */
        public Optional<ClassFile> file(CraftClass c) {
            return asking.stream().filter(a -> Objects.equals(a.classId(), c.id())).findFirst()
                    .map(a -> a.with(sheets.of(c.id(), a.materials())).part().file().in(c.venue() == null ? null : c.venue().toSpec()));
        }
    }

    /** @param others kits without a lesson that are bought for along with the classes */
    public Together plan(List<CraftClass> classes, List<TermRequest.Part> others) {
        return plan(gathered(classes, others), Progress.NONE);
    }

    /** Reads what is bought for; nothing is worked out yet. */
    public Gathered gathered(List<CraftClass> classes, List<TermRequest.Part> others) {
        List<Trouble> leftOut = new ArrayList<>();
        List<Asking> all = new ArrayList<>();
        classes.forEach(c -> sort(troubles.tried(c.line(), () -> asking(c)), all, leftOut));
        others.forEach(part -> all.add(new Asking(null, part, failure -> Trouble.of(part.title(), List.of(), failure))));
        AvailableStock.Specs sheets = shelf.sheets(all.stream().flatMap(a -> a.materials().stream()).distinct().toList(), classes.stream().map(CraftClass::id).toList());
        return new Gathered(all, sheets, new TermRequest(all.stream().map(Asking::part).toList(), sheets.all()), leftOut);
    }

    /** @param progress told after each class, and asked whether anybody still waits */
    public Together plan(Gathered gathered, Progress progress) {
        List<Trouble> leftOut = new ArrayList<>(gathered.leftOut());
        List<Asking> there = sound(gathered.asking(), a -> a.with(gathered.sheets().of(a.classId(), a.materials())), leftOut);
        Set<String> cut = there.stream().flatMap(a -> ClassNeeds.cut(a.part().file()).stream()).collect(Collectors.toSet());
        AtomicInteger done = new AtomicInteger();
        List<Asking> sound = sound(there, a -> {
            progress.tell(done.getAndIncrement(), there.size() + 1);
            return needing(a, cut);
        }, leftOut);
        progress.tell(there.size(), there.size() + 1);
        return bought(sound, gathered.sheets().all(), leftOut);
    }

    private Asking asking(CraftClass c) {
        ClassFile file = new ClassFile(c.project().toSpec(), c.setup(), null, List.of(), List.of());
        return new Asking(c.id(), new TermRequest.Part("“%s”".formatted(c.title()), file), failure -> ClassTroubles.trouble(c.line(), failure));
    }

    private Asking needing(Asking a, Set<String> cut) {
        remembered.needs(a.part().file(), cut);
        return a;
    }

    private static List<Asking> sound(List<Asking> all, UnaryOperator<Asking> work, List<Trouble> leftOut) {
        List<Asking> sound = new ArrayList<>();
        all.forEach(a -> sort(Tried.of(() -> work.apply(a), a.trouble()), sound, leftOut));
        return sound;
    }

    private static void sort(Tried<Asking> tried, List<Asking> sound, List<Trouble> leftOut) {
        if (tried instanceof Tried.Worked<Asking> worked) {
            sound.add(worked.value());
        } else {
            leftOut.add(((Tried.Failed<Asking>) tried).trouble());
        }
    }

    /** Where buying itself fails at a material, whoever takes that is left out, and the others are bought for. */
    private Together bought(List<Asking> asking, CatalogueSpec catalogue, List<Trouble> leftOut) {
        try {
            return new Together(remembered.term(new TermRequest(asking.stream().map(Asking::part).toList(), catalogue), LocalDate.now(clock)), leftOut);
        } catch (Unusable at) {
            List<Asking> rest = asking.stream().filter(a -> !a.fails(at)).toList();
            if (rest.size() == asking.size()) {
                throw at;
            }
            asking.stream().filter(a -> a.fails(at)).forEach(a -> leftOut.add(a.trouble().apply(at)));
            return bought(rest, catalogue, leftOut);
        }
    }
}
