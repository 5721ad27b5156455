package benchful.assessments;

import benchful.bin.EarlierVersion;
import benchful.classes.CraftClass;
import benchful.web.forms.Stored;
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
    Stored<AssessmentSpec> sheet;

    protected Assessment() {}

    static Assessment of(CraftClass craftClass, AssessmentSpec sheet) {
        Assessment assessment = new Assessment();
        assessment.craftClass = craftClass;
        assessment.sheet = Stored.of(sheet);
        return assessment;
    }

    public static Optional<Assessment> of(CraftClass craftClass) {
        return find("craftClass", craftClass).firstResultOptional();
    }

    void replace(AssessmentSpec newSheet) {
        EarlierVersion.keep("assessment", id == null ? null : craftClass.id(), Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
    }

    public AssessmentSpec sheet() {
        return sheet.read("the risk assessment of this class", "/classes/" + craftClass.id() + "/assessment");
    }

    public long version() {
        return version;
    }
}
