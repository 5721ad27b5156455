package benchful.web.sending;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.sql.SQLException;

/** Tells a page whose answer was lost on the way whether its form was saved all the same. */
@Path("/sendings/{key: [A-Za-z0-9_-]{22}}")
class SendingsPages {
    private final SentFormStore forms;

    SendingsPages(SentFormStore forms) {
        this.forms = forms;
    }

    @GET
    @Produces(MediaType.TEXT_PLAIN)
    public String show(@PathParam("key") String key) throws SQLException {
        return forms.isSaved(key) ? "saved" : "not saved";
    }
}
