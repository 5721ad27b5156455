package benchful.backups;

import io.quarkus.scheduler.Scheduled;
import io.quarkus.scheduler.Scheduled.ConcurrentExecution;
import jakarta.enterprise.context.ApplicationScoped;

/** Looks every few minutes whether a backup is due: one that was missed while the machine was off is taken soon after the start. */
@ApplicationScoped
class DueBackups {
    private final Backups backups;

    DueBackups(Backups backups) {
        this.backups = backups;
    }

    @Scheduled(every = "10m", delayed = "2m", concurrentExecution = ConcurrentExecution.SKIP)
    void look() {
        backups.takeIfDue();
    }
}
