package benchful.reviews;

import benchful.classes.CraftClass;
import benchful.plans.PlanService;
import benchful.web.FormTree;
import benchful.web.Pages;
import benchful.web.SheetForm;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import java.util.Optional;

/** Typing what happened in a class, and seeing it beside the plan. */
@Path("/classes/{id: \\d+}/review")
@Produces(MediaType.TEXT_HTML)
class ReviewsPages {
    private final SheetReader<ReviewSheet> reader;
    private final PlanService plans;

    ReviewsPages(PlanService plans) {
        this.plans = plans;
        this.reader = new SheetReader<>(ReviewSheet.class, "review-1", ReviewRules::check);
    }

    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance show(ReviewPage page);

        static native TemplateInstance unplanned(CraftClass craftClass);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = existing(id);
        return review(craftClass)
                .map(r -> Templates.show(ReviewPage.of(r, form(r))))
                .orElseGet(() -> Templates.unplanned(craftClass));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = CraftClass.toChange(id).orElseThrow(NotFoundException::new);
        Review review = review(craftClass).orElseThrow(NotFoundException::new);
        ObjectNode tree = new FormTree(reader.schema()).of(typed);
        long version = Pages.version(typed);
        SheetReader.Reading<ReviewSheet> reading = reader.tree(tree);
        if (reading instanceof SheetReader.Faulty<ReviewSheet> f) {
            return Pages.faulty(Templates.show(ReviewPage.of(review, SheetForm.faulty(f.tree(), f.faults(), version))));
        }
        if (version != review.version()) {
            return Pages.stale(Templates.show(ReviewPage.of(review, SheetForm.stale(reading.tree(), reader.written(review.sheet()), review.version()))));
        }
        review.replace(((SheetReader.Read<ReviewSheet>) reading).sheet());
        review.persistAndFlush();
        return Pages.seeOther("/classes/" + id + "/review");
    }

    private SheetForm form(Review review) {
        return SheetForm.of(reader.written(review.sheet()), review.version());
    }

    /** The stored review, or a blank one beside the plan of today; none where the class can't be planned. */
    private Optional<Review> review(CraftClass craftClass) {
        return Review.of(craftClass)
                .or(() -> plans.keep(craftClass, "reviewed").map(kept -> Review.of(craftClass, kept, ReviewSheet.EMPTY)));
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }
}
