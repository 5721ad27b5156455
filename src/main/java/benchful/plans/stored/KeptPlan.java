package benchful.plans.stored;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.learning.Pause;
import benchful.core.learning.PlannedStep;
import benchful.web.StoredEntity;
import benchful.web.forms.Stored;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * The plan as it was when the class was printed or run: its inputs and the times of its steps, so that later changes to the
 * project or the catalogue do not change what a review compares with.
 */
@Entity
public class KeptPlan extends StoredEntity {
    private static final String WHAT = "the plan that was kept when the class was printed or reviewed";

    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    LocalDateTime keptAt;

    String occasion;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<ClassFile> file;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<Steps> steps;

    /**
     * The planned steps, by start.
     *
     * @param breaks when they were planned; null in what was kept when each had a fixed time
     */
    public record Steps(List<PlannedStep> planned, @JsonInclude(JsonInclude.Include.NON_NULL) @JsonSetter(nulls = Nulls.SET) List<Pause> breaks) {
        public Steps {
            planned = planned == null ? List.of() : toldApart(planned);
        }

        /** A plan kept before it said which group does a step holds that step once for each: they are numbered in their order. */
        private static List<PlannedStep> toldApart(List<PlannedStep> steps) {
            Map<String, Long> times = steps.stream().collect(Collectors.groupingBy(PlannedStep::key, Collectors.counting()));
            Map<String, Integer> group = new HashMap<>();
            return steps.stream().map(s -> times.get(s.key()) == 1 ? s : s.of(group.merge(s.key(), 1, Integer::sum))).toList();
        }
    }

    protected KeptPlan() {}

    static KeptPlan of(CraftClass craftClass, ClassFile file, Steps steps, String occasion, LocalDateTime at) {
        KeptPlan kept = new KeptPlan();
        kept.craftClass = craftClass;
        kept.file = Stored.of(file);
        kept.steps = Stored.of(steps);
        kept.occasion = occasion;
        kept.keptAt = at;
        return kept;
    }

    /** The plan that was last printed or run. */
    public static Optional<KeptPlan> latest(CraftClass craftClass) {
        return find("craftClass = ?1 order by keptAt desc, id desc", craftClass).firstResultOptional();
    }

    /** @throws benchful.web.Unusable where what is stored can't be read */
    public ClassFile file() {
        return file.read(WHAT, null);
    }

    public List<PlannedStep> steps() {
        return steps.read(WHAT, null).planned();
    }

    public boolean isReadable() {
        return steps.readable().isPresent();
    }

    /** The breaks as they were planned. */
    public List<Pause> breaks() {
        List<Pause> kept = steps.read(WHAT, null).breaks();
        return kept != null ? kept : file().setup().meetings().stream().flatMap(m -> file().setup().breaksOf(m).stream()
                .map(b -> new Pause(m.date().atTime(b.at()), m.date().atTime(b.at()).plus(b.lasts())))).toList();
    }

    public LocalDateTime keptAt() {
        return keptAt;
    }

    /** What it was kept for: "printed", "reviewed". */
    public String occasion() {
        return occasion;
    }
}
