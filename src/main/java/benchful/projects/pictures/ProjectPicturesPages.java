package benchful.projects.pictures;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.jboss.resteasy.reactive.RestPath;

/** The pictures of projects, stored and picked for one that is not saved yet. */
@Path("/projects")
class ProjectPicturesPages {
    @GET
    @Path("{id: \\d+}/pictures/{name}")
    @Transactional
    public Response show(@RestPath long id, @RestPath String name, @Context UriInfo uri, @Context Request request) {
        ProjectPicture picture = ProjectPicture.byName(id, name).orElseThrow(NotFoundException::new);
        return PictureAnswer.of(picture.content(), picture.mediaType(), uri.getQueryParameters(), request);
    }

    @GET
    @Path("pictures/{digest: [0-9a-f]+}")
    @Transactional
    public Response held(@RestPath String digest, @Context UriInfo uri, @Context Request request) {
        HeldPicture picture = HeldPicture.named(digest).orElseThrow(NotFoundException::new);
        return PictureAnswer.of(picture.content(), picture.mediaType(), uri.getQueryParameters(), request);
    }
}
