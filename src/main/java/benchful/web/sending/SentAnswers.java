package benchful.web.sending;

import benchful.web.Pages;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.sql.SQLException;
import java.time.Duration;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Remembers where each sending led, and leads one that is sent once more to the same place. */
public final class SentAnswers {
    private static final Logger LOG = Logger.getLogger(SentAnswers.class);
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int BETWEEN_LOOKS = 50;

    private final SentFormStore forms;
    private final Sending sending;
    private final ResendPage resend;

    SentAnswers(SentFormStore forms, Sending sending, ResendPage resend) {
        this.forms = forms;
        this.sending = sending;
        this.resend = resend;
    }

    @ServerResponseFilter
    void remember(ContainerResponseContext response) {
        boolean saved = response.getStatusInfo().getFamily() == Response.Status.Family.REDIRECTION;
        sending.take().filter(Take::isHeld).ifPresent(form -> remember(form, saved ? response.getLocation() : null));
    }

    /** @param location where the browser is led; null where the form was not saved */
    private void remember(Take form, URI location) {
        try {
            if (location == null) {
                forms.free(form.key(), form.digest());
            } else {
                forms.answered(form.key(), form.digest(), local(location));
            }
        } catch (SQLException e) {
            LOG.warnf(e, "It could not be written down where a form led; sent once more, it is asked about");
        }
    }

    /** Without the host: another instance may bear another name. */
    private static String local(URI location) {
        return location.getRawPath()
                + (location.getRawQuery() == null ? "" : "?" + location.getRawQuery())
                + (location.getRawFragment() == null ? "" : "#" + location.getRawFragment());
    }

    @ServerExceptionMapper
    Response again(AlreadySent sent) throws SQLException, InterruptedException {
        Take form = sending.take().orElseThrow();
        ReceivedForm received = sending.form().orElseThrow();
        SentFormStore.Fate fate = forms.fate(form.key(), form.digest());
        for (long waited = 0; fate.isOpen() && waited < PATIENCE.toMillis(); waited += BETWEEN_LOOKS) {
            Thread.sleep(BETWEEN_LOOKS);
            fate = forms.fate(form.key(), form.digest());
        }
        if (!fate.taken()) {
            // It came to nothing meanwhile. The browser sends it once more by itself, and is told why.
            return Response.temporaryRedirect(URI.create(received.address())).build();
        }
        return fate.answer().map(Pages::seeOther).orElseGet(() -> resend.unsure(received));
    }
}
