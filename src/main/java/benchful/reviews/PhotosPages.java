package benchful.reviews;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.projects.pictures.PictureAnswer;
import benchful.projects.pictures.PictureFile;
import benchful.web.Formats;
import benchful.web.Pages;
import benchful.web.forms.SentForm;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Objects;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Photographs of the pieces that a class finished. They are made fit as the pictures of projects are. */
@Path("/classes/{id: \\d+}/photos")
@Produces(MediaType.TEXT_HTML)
class PhotosPages {
    private static final int MOST = ClassFile.MOST_PHOTOS;
    /** In base64 they have room in the file of their class with all else that is in it. */
    private static final int MOST_TOGETHER_MB = 9;
    private static final int MB = 1024 * 1024;
    private static final int LONGEST = 200;

    private final Removals removals;

    PhotosPages(Removals removals) {
        this.removals = removals;
    }

    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance photos(PhotosView page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param caption as it was typed
     * @param fault why the photograph was not taken; null where none was
     */
    @TemplateData
    public record PhotosView(CraftClass craftClass, List<PhotoLine> photos, String caption, String fault) {}

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        return page(Pages.existing(CraftClass.class, id), "", null);
    }

    @GET
    @Path("{photo: \\d+}")
    @Transactional
    public Response picture(@PathParam("id") long id, @PathParam("photo") long number, @Context UriInfo uri, @Context Request request) {
        ClassPhoto photo = existing(id, number);
        return PictureAnswer.of(photo.content(), photo.mediaType(), uri.getQueryParameters(), request);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Transactional
    public Response create(@PathParam("id") long id, MultipartFormDataInput input) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        SentForm form = SentForm.of(input);
        String caption = Objects.requireNonNullElse(form.fields().getFirst("caption"), "").strip();
        PictureFile file = taken(craftClass, form, caption);
        if (file instanceof PictureFile.Fit fit) {
            ClassPhoto.of(craftClass, caption, fit).persist();
            return Pages.seeOther("/classes/%d/review#pieces".formatted(id));
        }
        return Pages.faulty(page(craftClass, caption, ((PictureFile.Unfit) file).sentence()));
    }

    private static PictureFile taken(CraftClass craftClass, SentForm form, String caption) {
        if (caption.length() > LONGEST) {
            return new PictureFile.Unfit("Say what it shows in at most %d letters, and pick the photograph again.".formatted(LONGEST));
        }
        if (ClassPhoto.photos(craftClass).size() >= MOST) {
            return new PictureFile.Unfit("A class keeps at most %d photographs. Remove one first.".formatted(MOST));
        }
        PictureFile file = form.file("photo").map(f -> PictureFile.photo(f.content())).orElse(new PictureFile.Unfit("Pick a photograph first, a PNG or JPEG file."));
        return file instanceof PictureFile.Fit fit && ClassPhoto.of(craftClass).stream().mapToLong(p -> p.content.length).sum() + fit.content().length > (long) MOST_TOGETHER_MB * MB
                ? new PictureFile.Unfit("The photographs of a class have at most %d MB together, so that its file can carry them. Remove one first, or pick a smaller one.".formatted(MOST_TOGETHER_MB))
                : file;
    }

    @POST
    @Path("{photo: \\d+}/removal")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response remove(@PathParam("id") long id, @PathParam("photo") long number) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        ClassPhoto photo = existing(id, number);
        String page = "/classes/%d/photos".formatted(id);
        return removals.remove(new Thing("photograph", "%s, %s".formatted(craftClass.title(), Formats.words(craftClass.startsAt().toLocalDate())), page), page, photo::delete);
    }

    private static ClassPhoto existing(long id, long number) {
        return ClassPhoto.of(id, number).orElseThrow(NotFoundException::new);
    }

    private static TemplateInstance page(CraftClass craftClass, String caption, String fault) {
        return Templates.photos(new PhotosView(craftClass, ClassPhoto.photos(craftClass), caption, fault));
    }
}
