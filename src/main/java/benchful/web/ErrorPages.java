package benchful.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.persistence.OptimisticLockException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.lang.annotation.Annotation;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.hibernate.exception.ConstraintViolationException;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** The one place where a failure becomes an answer: a page for people, problem details for programs, never a stack trace. */
public final class ErrorPages {
    private static final Logger LOG = Logger.getLogger(ErrorPages.class);
    private static final String GONE = "There is nothing at this address. It may have been removed.";
    private static final String TOO_LARGE = "What was sent is too large. The limit is 16 MB.";
    private static final String REFUSED = "The request could not be taken as it was sent. Go back, load the page again and repeat it.";

    private static final String COLLISION =
            "Somebody else saved the same thing at the same moment. Nothing of yours was stored: go back, load the page again and repeat it.";

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance error(String title, String detail, String reference);

        private Templates() {}
    }

    @ServerExceptionMapper
    Response refused(WebApplicationException e, UriInfo uri) {
        int status = e.getResponse().getStatus();
        if (status < 400) {
            return e.getResponse();
        }
        return switch (status) {
            case 404 -> answer(uri, status, "Not found", GONE, null);
            case 413 -> answer(uri, status, "Too large", TOO_LARGE, null);
            default -> status < 500 ? answer(uri, status, "Not possible", REFUSED, null) : bug(e, uri);
        };
    }

    @ServerExceptionMapper
    Response bug(Throwable e, UriInfo uri) {
        if (collision(e)) {
            return answer(uri, 409, "Saved at the same moment", COLLISION, null);
        }
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(e, "Fault %s at %s", reference, uri.getPath());
        return answer(uri, 500, "Something went wrong here",
                "This is a fault of the program, not yours. What was saved before is safe. Reference: " + reference, reference);
    }

    /** A filter that turned a request away has said nothing yet. */
    @ServerResponseFilter
    void worded(ContainerResponseContext response, UriInfo uri) {
        if (response.getStatus() >= 400 && !response.hasEntity()) {
            Response answer = refused(new WebApplicationException(response.getStatus()), uri);
            response.setEntity(answer.getEntity(), new Annotation[0], answer.getMediaType());
        }
    }

    /** Two people stored the same thing at the same moment: the later of them is asked to repeat. */
    private static boolean collision(Throwable e) {
        return Stream.iterate(e, Objects::nonNull, Throwable::getCause)
                .anyMatch(c -> c instanceof OptimisticLockException || c instanceof ConstraintViolationException);
    }

    private static Response answer(UriInfo uri, int status, String title, String detail, String reference) {
        if (uri.getPath().startsWith("/api/")) {
            return Problem.of(status, title, detail);
        }
        return Response.status(status)
                .type(MediaType.TEXT_HTML + ";charset=UTF-8")
                .entity(Templates.error(title, detail, reference).render())
                .build();
    }
}
