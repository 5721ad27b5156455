package benchful.projects.writing;

import benchful.projects.pictures.HeldPicture;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;

/** Forgets pictures that were picked thirty days ago and that no project being written asks for any more. */
@ApplicationScoped
class HeldPicturesSweep {
    private static final Duration KEPT = Duration.ofDays(30);

    private final Clock clock;

    HeldPicturesSweep(Clock clock) {
        this.clock = clock;
    }

    @Scheduled(every = "24h", delayed = "2m")
    @Transactional
    void sweep() {
        HeldPicture.sweep(clock.instant().minus(KEPT));
    }
}
