package benchful.web.door;

import benchful.web.Mending;
import benchful.web.sending.ResendPage;
import benchful.web.sending.Sending;
import io.vertx.core.http.HttpClosedException;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.OptimisticLockException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.lang.annotation.Annotation;
import java.sql.SQLException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import org.hibernate.exception.ConstraintViolationException;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** The one place where a failure becomes an answer: a page for people, problem details for programs, never a stack trace. */
public final class ErrorPages {
    private static final Logger LOG = Logger.getLogger(ErrorPages.class);
    private static final String GONE = "There is nothing at this address. It may have been removed.";
    private static final String REFUSED = "The request could not be taken as it was sent. Go back, load the page again and repeat it.";
    private static final String COLLISION =
            "Somebody else saved the same thing at the same moment. Nothing of yours was stored: go back, load the page again and repeat it.";
    private static final String UNSTORABLE = "A text holds a character that can't be stored, such as one of code 0. Type it again without it.";
    private static final int UNCLEAR = Response.Status.BAD_REQUEST.getStatusCode();

    private final BodyLimit limit;
    private final Sending sending;
    private final ResendPage resend;
    private final Instance<Mending> features;

    ErrorPages(BodyLimit limit, Sending sending, ResendPage resend, Instance<Mending> features) {
        this.features = features;
        this.limit = limit;
        this.sending = sending;
        this.resend = resend;
    }

    @ServerExceptionMapper
    Response refused(WebApplicationException e, UriInfo uri) {
        int status = e.getResponse().getStatus();
        if (status < 400) {
            return e.getResponse();
        }
        if (status >= 500) {
            return bug(e, uri);
        }
        return refusal(status, uri.getPath()).answer(uri.getPath());
    }

    private Refusal refusal(int status, String path) {
        return switch (status) {
            case 404 -> new Refusal(status, "Not found", GONE);
            case 413 -> limit.refusal();
            default -> new Refusal(status, "Not possible", Refusal.isForPrograms(path) ? forPrograms(status) : REFUSED);
        };
    }

    private static String forPrograms(int status) {
        return switch (status) {
            case 405 -> "This address does not take that method. See its description in /q/openapi.";
            case 406 -> "This address answers application/json and, where something is to be mended, application/problem+json. Name one of them in the Accept header, or leave it out.";
            case 415 -> "This address takes a class file as application/yaml or application/json. Say which it is in the Content-Type header.";
            default -> "The request could not be read. See the description of this address in /q/openapi.";
        };
    }

    @ServerExceptionMapper
    Response bug(Throwable e, UriInfo uri) {
        if (caused(e, HttpClosedException.class::isInstance)) {
            return givenUp(null);
        }
        Optional<Outage> outage = Outage.of(e);
        if (outage.isPresent()) {
            LOG.warnf("%s could not be answered: %s (%s)", uri.getPath(), outage.get().words(), e.getMessage());
            return later(outage.get(), uri.getPath());
        }
        if (caused(e, ErrorPages::isCollision)) {
            return new Refusal(409, "Saved at the same moment", COLLISION).answer(uri.getPath());
        }
        if (caused(e, cause -> isState(cause, "22021"))) {
            return new Refusal(UNCLEAR, "Not possible", UNSTORABLE).answer(uri.getPath());
        }
        Optional<Response> mended = UnusablePages.answer(features, uri.getPath(), e);
        if (mended.isPresent()) {
            return mended.get();
        }
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(e, "Fault %s at %s", reference, uri.getPath());
        return new Refusal(500, "Something went wrong here",
                "This is a fault of the program, not yours. What was saved before is safe. Reference: " + reference).answer(uri.getPath());
    }

    /** Nobody reads the answer. */
    @ServerExceptionMapper
    Response givenUp(CancellationException nobodyWaits) {
        return Response.status(Response.Status.SERVICE_UNAVAILABLE).entity("").build();
    }

    /** A form is shown again with all that was typed, to be sent when what was amiss has passed. */
    private Response later(Outage outage, String path) {
        return sending.form().map(form -> resend.later(form, outage.words(), outage.retryAfter()))
                .orElseGet(() -> new Refusal(503, "Not possible just now", outage.words(), outage.retryAfter()).answer(path));
    }

    /** A filter that turned a request away has said nothing yet. */
    @ServerResponseFilter
    void worded(ContainerResponseContext response, UriInfo uri) {
        if (response.getStatus() >= 400 && !response.hasEntity()) {
            Response answer = refused(new WebApplicationException(response.getStatus()), uri);
            response.setEntity(answer.getEntity(), new Annotation[0], answer.getMediaType());
        }
    }

    private static boolean caused(Throwable e, Predicate<Throwable> by) {
        return Outage.causes(e, Collections.newSetFromMap(new IdentityHashMap<>())).anyMatch(by);
    }

    /** Two people stored the same thing at the same moment: the later of them is asked to repeat. */
    private static boolean isCollision(Throwable cause) {
        return cause instanceof OptimisticLockException || cause instanceof ConstraintViolationException
                || isState(cause, "40001") || isState(cause, "40P01");
    }

    private static boolean isState(Throwable cause, String state) {
        return cause instanceof SQLException e && state.equals(e.getSQLState());
    }
}
