package benchful.web.sending;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** Shows a form that could not be taken once more: what it holds, and a button that sends just that. Nothing typed is lost. */
@ApplicationScoped
public class ResendPage {
    private static final String MISFIT = "This form does not fit the key that the program gave your browser; it may have been open for very long."
            + " Everything in it is listed here, ready to be sent again. If you did not fill it in yourself just now, leave this page.";
    private static final String UNSURE = "This form was sent before, but the program ended before it could say whether it was saved."
            + " Look in another window whether it is there. If it is not, send it again here.";

    private final Keys keys;
    private final RoutingContext routing;

    ResendPage(Keys keys, RoutingContext routing) {
        this.keys = keys;
        this.routing = routing;
    }

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance resend(Shown page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param key for the next sending
     */
    @TemplateData
    public record Shown(String title, String words, String field, String key, ReceivedForm form) {}

    /** Its key is missing or was not made for this browser. */
    Response unknown(ReceivedForm form) {
        return page(Response.Status.FORBIDDEN, "Nothing was lost: send it again", MISFIT, sameKey(form), form);
    }

    /** Taken before, with an unknown end. */
    Response unsure(ReceivedForm form) {
        return page(Response.Status.CONFLICT, "Was this saved?", UNSURE, keys.fresh(routing), form);
    }

    /**
     * Something outside the program was amiss, and may soon be well.
     *
     * @param after so many seconds it may be worth another try [s]
     */
    public Response later(ReceivedForm form, String words, int after) {
        Response page = page(Response.Status.SERVICE_UNAVAILABLE, "Not saved yet, and nothing was lost", words, sameKey(form), form);
        return Response.fromResponse(page).header(HttpHeaders.RETRY_AFTER, after).build();
    }

    /** The key it was sent with, signed for this browser, so that it is still taken once only. */
    private String sameKey(ReceivedForm form) {
        return Keys.drawn(form.key()).map(key -> keys.signed(key, routing)).orElseGet(() -> keys.fresh(routing));
    }

    private static Response page(Response.Status status, String title, String words, String key, ReceivedForm form) {
        return Response.status(status).type(MediaType.TEXT_HTML + ";charset=UTF-8")
                .entity(Templates.resend(new Shown(title, words, ReceivedForm.KEY, key, form)).render()).build();
    }
}
