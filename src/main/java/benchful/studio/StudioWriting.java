package benchful.studio;

import benchful.web.Replaced;
import benchful.web.Writing;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;

/** Lets the writing apply that the studio has chosen: from the start on, once another is saved, and after a backup was put back. */
@ApplicationScoped
class StudioWriting {

    void begin(@Observes StartupEvent start) {
        read();
    }

    void change(@Observes(during = TransactionPhase.AFTER_SUCCESS) StudioSpec saved) {
        Writing.use(saved.writes());
    }

    void again(@Observes Replaced all) {
        read();
    }

    private static void read() {
        Writing.use(QuarkusTransaction.joiningExisting().call(Studio::current).writes());
    }
}
