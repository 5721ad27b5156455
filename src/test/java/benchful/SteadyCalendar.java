package benchful;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** In tests it is always 25 November 2026 in the morning, before the coming sample classes; from there the time goes on. */
@Dependent
class SteadyCalendar {
    private static final Instant TODAY = Instant.parse("2026-11-25T09:00:00Z");
    private static final Duration AWAY = Duration.between(Instant.now(), TODAY);

    @Produces
    @Alternative
    @Priority(1)
    Clock clock() {
        return Clock.offset(Clock.systemDefaultZone(), AWAY);
    }
}
