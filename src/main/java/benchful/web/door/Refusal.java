package benchful.web.door;

import benchful.web.forms.Problem;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/**
 * Why something can't be answered, in words: a page for people, problem details for programs.
 *
 * @param status of HTTP
 * @param retryAfter so many seconds it may be worth another try [s]; 0 where it is not
 */
record Refusal(int status, String title, String detail, int retryAfter) {
    static final String HTML = MediaType.TEXT_HTML + ";charset=UTF-8";

    Refusal(int status, String title, String detail) {
        this(status, title, detail, 0);
    }

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance error(String title, String detail);

        private Templates() {}
    }

    static boolean isForPrograms(String path) {
        return path.startsWith("/api/");
    }

    Response answer(String path) {
        Response answer = isForPrograms(path) ? problem() : page();
        return retryAfter == 0 ? answer : Response.fromResponse(answer).header(HttpHeaders.RETRY_AFTER, retryAfter).build();
    }

    private Response problem() {
        return Problem.of(status, title, detail);
    }

    private Response page() {
        return Response.status(status).type(HTML).entity(Templates.error(title, detail).render()).build();
    }

    /** Answers before the request reaches a page; what it still sends is not waited for. */
    void end(RoutingContext routing) {
        boolean forPrograms = isForPrograms(routing.request().path());
        routing.response().setStatusCode(status)
                .putHeader(HttpHeaders.CONTENT_TYPE, forPrograms ? Problem.MEDIA_TYPE : HTML);
        if (!routing.request().isEnded()) {
            routing.response().putHeader("Connection", "close");
        }
        if (forPrograms) {
            routing.end(json());
        } else {
            Templates.error(title, detail).renderAsync().whenComplete((page, failure) -> end(routing, failure == null ? page : null));
        }
        routing.request().resume();
    }

    /** @param page null where it can't be shown, and only its words are */
    private void end(RoutingContext routing, String page) {
        if (page == null) {
            routing.response().putHeader(HttpHeaders.CONTENT_TYPE, MediaType.TEXT_PLAIN + ";charset=UTF-8");
        }
        routing.end(page == null ? title + "\n" + detail : page);
    }

    private String json() {
        try {
            return SpecFormat.json().writeValueAsString(problem().getEntity());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Problem details are plain texts and numbers.", e);
        }
    }
}
