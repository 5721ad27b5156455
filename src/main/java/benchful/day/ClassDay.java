package benchful.day;

import benchful.classes.CraftClass;
import benchful.plans.stored.KeptPlan;
import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToOne;
import java.util.Optional;

/** That a class was run, and by which plan: the one that was kept with the first tap. */
@Entity
public class ClassDay extends StoredEntity {
    @OneToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    KeptPlan plan;

    protected ClassDay() {}

    static ClassDay begun(CraftClass craftClass, KeptPlan plan) {
        ClassDay day = new ClassDay();
        day.craftClass = craftClass;
        day.plan = plan;
        day.persist();
        return day;
    }

    static Optional<ClassDay> of(CraftClass craftClass) {
        return find("from ClassDay d join fetch d.plan where d.craftClass = ?1", craftClass).firstResultOptional();
    }

    KeptPlan plan() {
        return plan;
    }
}
