package benchful;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** In tests it is always 10 February 2027 in the morning, three weeks before the coming sample classes; from there the time goes on. */
@Dependent
class SteadyCalendar {
    private static final Instant TODAY = Instant.parse("2027-02-10T09:00:00Z");
    private static final Duration AWAY = Duration.between(Instant.now(), TODAY);

    @Produces
    @Alternative
    @Priority(1)
    Clock clock() {
        return Clock.offset(Clock.systemDefaultZone(), AWAY);
    }
}
