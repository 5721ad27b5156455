package benchful.backups;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.annotations.OptimisticLock;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** The one schedule of this machine or server: as it comes with the program until the tutor changes it. */
@Entity
class BackupSchedule extends PanacheEntityBase {
    private static final String FIRST = "insert into backup_schedule (id, version, sheet, since) values (1, 0, '{}', :today) on conflict do nothing";

    @Id
    Long id;

    @Version
    long version;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    ScheduleSpec sheet;

    /** From when on the reminder counts where nothing has left yet. */
    LocalDate since;

    @OptimisticLock(excluded = true)
    LocalDate quietUntil;

    /** For the database only; see {@link #current}. */
    protected BackupSchedule() {}

    static BackupSchedule current(LocalDate today) {
        BackupSchedule stored = findById(1L);
        if (stored == null) {
            getEntityManager().createNativeQuery(FIRST).setParameter("today", today).executeUpdate();
            stored = findById(1L);
        }
        return stored;
    }
}
