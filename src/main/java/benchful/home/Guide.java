package benchful.home;

import benchful.web.Writing;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.type.TypeReference;
import io.quarkus.arc.Arc;
import io.quarkus.arc.Unremovable;
import io.quarkus.runtime.BlockingOperationControl;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A few plain sentences on each page for those who want them. Whoever asked for them has it noted in the browser, as there are no
 * accounts; every page can show them.
 */
@Named("guide")
@ApplicationScoped
@Unremovable
public class Guide {
    static final String COOKIE = "benchful-guide";
    static final String SHOWN = "shown";

    private static final String PLACE = "/guide.yaml";
    private static final List<Stop> STOPS = read();

    private final CurrentVertxRequest request;

    Guide(CurrentVertxRequest request) {
        this.request = request;
    }

    /** @param at what the address of a page matches where this is said */
    record Stop(String at, List<String> says) {}

    /** Empty where nobody asked for them, and on pages that explain themselves. */
    public List<String> getSentences() {
        return isWanted() ? sentences(getPage()) : List.of();
    }

    /** What is said on a page, by its address; none where nothing needs to be. */
    public static List<String> sentences(String page) {
        return STOPS.stream().filter(stop -> page.matches(stop.at())).findFirst().map(Stop::says).orElse(List.of()).stream().map(Writing.current()::spelt).toList();
    }

    /** A page of a failure may be made outside any request, or where no form can be. */
    public boolean isWanted() {
        Cookie noted = !Arc.container().requestContext().isActive() || request.getCurrent() == null || !BlockingOperationControl.isBlockingAllowed() ? null : sent().getCookie(COOKIE);
        return noted != null && noted.getValue().equals(SHOWN);
    }

    /** The address of the page, without what it was asked with. */
    public String getPage() {
        return sent().path();
    }

    private HttpServerRequest sent() {
        return request.getCurrent().request();
    }

    private static List<Stop> read() {
        try (InputStream in = Guide.class.getResourceAsStream(PLACE)) {
            return SpecFormat.yaml().readValue(in, new TypeReference<List<Stop>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
