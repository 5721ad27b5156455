package benchful.assessments;

import benchful.bin.EarlierVersion;
import benchful.classes.CraftClass;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OneToOne;
import jakarta.persistence.Version;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** The stored assessment of one class: the draft once the tutor has saved it. */
@Entity
public class Assessment extends PanacheEntityBase {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long id;

    /** From 1, so that a form that began with the draft, version 0, is told from one that began with this. */
    @Version
    long version = 1;

    @OneToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    AssessmentSheet sheet;

    protected Assessment() {}

    static Assessment of(CraftClass craftClass, AssessmentSheet sheet) {
        Assessment assessment = new Assessment();
        assessment.craftClass = craftClass;
        assessment.sheet = sheet;
        return assessment;
    }

    public static Optional<Assessment> of(CraftClass craftClass) {
        return find("craftClass", craftClass).firstResultOptional();
    }

    void replace(AssessmentSheet newSheet) {
        EarlierVersion.keep("assessment", id == null ? null : craftClass.id(), sheet, newSheet);
        sheet = newSheet;
    }

    public AssessmentSheet sheet() {
        return sheet;
    }

    public long version() {
        return version;
    }
}
