package benchful.assessments;

import benchful.bin.EarlierVersion;
import benchful.classes.CraftClass;
import benchful.web.EditedEntity;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OneToOne;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** The stored assessment of one class: the draft once the tutor has saved it. */
@Entity
public class Assessment extends EditedEntity {
    @OneToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<AssessmentSpec> sheet;

    /** Its versions count from 1, so that a form that began with the draft, version 0, is told from one that began with this. */
    protected Assessment() {
        version = 1;
    }

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
        EarlierVersion.keep("assessment", isStored() ? craftClass.id() : null, Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
    }

    public AssessmentSpec sheet() {
        return sheet.read("the risk assessment of this class", "/classes/" + craftClass.id() + "/assessment");
    }
}
