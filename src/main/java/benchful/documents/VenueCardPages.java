package benchful.documents;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.venues.Venue;
import benchful.venues.VenueSpec;
import benchful.web.Pages;
import benchful.web.door.Costly;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;

/** The emergency card of a room, to hang by its door before any class is planned there. */
@Path("/venues/{id: \\d+}/emergency.pdf")
class VenueCardPages {
    private final DocumentService documents;

    VenueCardPages(DocumentService documents) {
        this.documents = documents;
    }

    /** On the studio's paper. */
    @GET
    @Costly
    @Produces("application/pdf")
    @Transactional
    public Response show(@PathParam("id") long id, @QueryParam("version") String version) {
        VenueSpec venue = Pages.existing(Venue.class, id).toSpec();
        StudioSpec studio = Studio.current();
        Version chosen = version == null ? Version.NORMAL : Version.of(version).orElseThrow(NotFoundException::new);
        PrintOptions options = PrintOptions.usual(studio, chosen);
        StreamingOutput card = out -> documents.writeEmergencyCard(venue, studio, options, out);
        return Response.ok(card).header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"emergency-card.pdf\"").build();
    }
}
