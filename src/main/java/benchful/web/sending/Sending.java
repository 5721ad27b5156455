package benchful.web.sending;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Optional;

/**
 * What this request brings, if it brings a form; and the source of keys for the forms on the page that answers it
 * ({@code inject:sending.key} in the tag that every posting form holds).
 */
@Named("sending")
@RequestScoped
public class Sending {
    private final Keys keys;
    private final RoutingContext routing;
    private ReceivedForm form;
    private Take take;

    Sending(Keys keys, RoutingContext routing) {
        this.keys = keys;
        this.routing = routing;
    }

    /** A key for one more form. */
    public String getKey() {
        return keys.fresh(routing);
    }

    /** The name of the field that holds the key. */
    public String getField() {
        return ReceivedForm.KEY;
    }

    /** True where the page answers a form, which then is shown again with what was typed. */
    public boolean isAgain() {
        return form != null;
    }

    /** The form that came; none on other requests, and while it has not been read yet. */
    public Optional<ReceivedForm> form() {
        return Optional.ofNullable(form);
    }

    void received(ReceivedForm received) {
        form = received;
    }

    /** Its key fits: it may be taken, once. */
    void accepted(String key) {
        take = new Take(key, form.digest());
    }

    /** None where no form came, or one whose key does not fit. */
    Optional<Take> take() {
        return Optional.ofNullable(take);
    }
}
