package benchful.studio;

import benchful.bin.EarlierVersions;
import benchful.projects.pictures.PictureFile;
import benchful.web.Pages;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** The page of the studio: its form, and the picture of its sign. */
@Path("/studio")
@Produces(MediaType.TEXT_HTML)
class StudioPages {
    private static final SpecReader<StudioSpec> READER = new SpecReader<>(StudioSpec.class, sheet -> List.of());

    private final EarlierVersions earlier;
    private final Event<StudioSpec> saved;

    StudioPages(EarlierVersions earlier, Event<StudioSpec> saved) {
        this.earlier = earlier;
        this.saved = saved;
    }

    @CheckedTemplate(basePath = "studio")
    static class Templates {
        static native TemplateInstance show(StudioView page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        return page(null);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(MultivaluedMap<String, String> form) {
        return post().answer(form, new StudioTarget(Studio.toChange(), saved));
    }

    @POST
    @Path("{id: 1}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("studio", Studio.ONLY, version, form);
        return post().putBack(wanted.version().sheet(), wanted.fresh(), new StudioTarget(Studio.toChange(), saved));
    }

    /** Takes a picture of the sign; none chosen takes away the one that is there. */
    @POST
    @Path("sign")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Transactional
    public Response takeSign(@RestForm("file") FileUpload upload) {
        PictureFile picture = upload == null || upload.size() == 0 ? null : PictureFile.of(content(upload));
        if (picture instanceof PictureFile.Unfit unfit) {
            return Pages.faulty(page(unfit.sentence()));
        }
        Studio.toChange().show((PictureFile.Fit) picture);
        return Pages.seeOther("/studio");
    }

    private static byte[] content(FileUpload upload) {
        try {
            return Files.readAllBytes(upload.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @GET
    @Path("sign")
    @Produces("image/*")
    @Transactional
    public Response sign() {
        Studio studio = Studio.only().filter(Studio::hasLogo).orElseThrow(NotFoundException::new);
        return Response.ok(studio.logo(), studio.logoType()).header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox")
                .header("X-Content-Type-Options", "nosniff").header("Cache-Control", "no-cache").build();
    }

    private static SpecPost<StudioSpec> post() {
        return new SpecPost<>(READER, form -> page(form, null));
    }

    private static TemplateInstance page(String fault) {
        return page(Studio.only().map(s -> READER.form(s.stored(), s.version())).orElseGet(() -> SpecForm.of(SpecFormat.json().createObjectNode(), 0)), fault);
    }

    private static TemplateInstance page(SpecForm form, String fault) {
        return Templates.show(new StudioView(form, Studio.only().filter(Studio::hasLogo).isPresent(), fault));
    }
}
