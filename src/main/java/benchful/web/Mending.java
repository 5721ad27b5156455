package benchful.web;

import jakarta.ws.rs.core.Response;
import java.util.Optional;

/** Asked where a page fails: the feature that it belongs to tells what it failed at, and offers to mend or to remove it. */
public interface Mending {
    /** @return the page that says so; nothing where the page is no one's of the feature */
    Optional<Response> answer(String path, Throwable failure);
}
