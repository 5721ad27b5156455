package benchful.web.sending;

import benchful.web.Pages;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.WithFormRead;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;

/**
 * Pages change things only through the program's own forms, known by their key. A form whose key does not fit this browser is
 * shown again with all that was typed. The API, which takes files and no cookies, is left out.
 */
public final class FormCheck {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");
    private static final int NONE = 0;

    private final Sending sending;
    private final Keys keys;
    private final ResendPage resend;

    FormCheck(Sending sending, Keys keys, ResendPage resend) {
        this.sending = sending;
        this.keys = keys;
        this.resend = resend;
    }

    @ServerRequestFilter
    @WithFormRead
    Optional<Response> check(ResteasyReactiveContainerRequestContext request, RoutingContext routing) {
        if (SAFE.contains(request.getMethod()) || request.getUriInfo().getPath().startsWith("/api/")) {
            return Optional.empty();
        }
        ReceivedForm form = read(request, routing);
        sending.received(form);
        if (!keys.fits(form.key(), routing)) {
            return Optional.of(resend.unknown(form));
        }
        sending.accepted(Keys.drawn(form.key()).orElseThrow());
        return Optional.empty();
    }

    private static ReceivedForm read(ResteasyReactiveContainerRequestContext request, RoutingContext routing) {
        FormData data = ((ResteasyReactiveRequestContext) request.getServerRequestContext()).getFormData();
        boolean multipart = MediaType.MULTIPART_FORM_DATA_TYPE.isCompatible(request.getMediaType());
        return ReceivedForm.of(Pages.own(routing.request().uri()), multipart, data == null ? new FormData(NONE) : data);
    }
}
