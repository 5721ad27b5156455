package benchful.assessments;

import benchful.classes.CraftClass;
import benchful.web.StoredEntity;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.LocalDateTime;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** An assessment as it was printed; it is never changed. */
@Entity
class PrintedAssessment extends StoredEntity {
    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    LocalDateTime printedAt;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<AssessmentSpec> sheet;

    protected PrintedAssessment() {}

    static PrintedAssessment of(CraftClass craftClass, AssessmentSpec sheet, LocalDateTime at) {
        PrintedAssessment printed = new PrintedAssessment();
        printed.craftClass = craftClass;
        printed.sheet = Stored.of(sheet);
        printed.printedAt = at;
        return printed;
    }

    /** All versions that were printed, the latest first. */
    static List<PrintedAssessment> of(CraftClass craftClass) {
        return list("craftClass = ?1 order by printedAt desc, id desc", craftClass);
    }

    /** @param number its place among those of its class, from 1 */
    AssessmentPrint asPrint(int number) {
        return new AssessmentPrint(id, number, printedAt, sheet.read("the risk assessment that was printed", null));
    }
}
