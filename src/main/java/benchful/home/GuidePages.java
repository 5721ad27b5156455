package benchful.home;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.time.Duration;

/** Puts the guide on, and off by one press on any page. */
@Path("/guide")
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
class GuidePages {
    /** The longest that browsers keep a cookie. */
    private static final Duration KEPT = Duration.ofDays(400);
    private static final String PAGE = "/[\\w/-]{0,100}";

    @POST
    public Response begin(@Context UriInfo asked) {
        return answer("/", Guide.SHOWN, KEPT, asked);
    }

    @POST
    @Path("removal")
    public Response end(MultivaluedMap<String, String> form, @Context UriInfo asked) {
        String page = form.getFirst("page");
        return answer(page != null && page.matches(PAGE) && !page.startsWith("//") ? page : "/", "", Duration.ZERO, asked);
    }

    private static Response answer(String page, String noted, Duration kept, UriInfo asked) {
        return Response.seeOther(URI.create(page)).cookie(new NewCookie.Builder(Guide.COOKIE).value(noted).path("/").maxAge((int) kept.toSeconds()).httpOnly(true)
                .secure(asked.getBaseUri().getScheme().equals("https")).sameSite(NewCookie.SameSite.LAX).build()).build();
    }
}
