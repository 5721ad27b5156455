package benchful.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

/** The one clock that pages read, so that tests can set it. */
@ApplicationScoped
class ClockSource {
    @Produces
    Clock clock() {
        return Clock.systemDefaultZone();
    }
}
