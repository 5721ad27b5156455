package benchful.reviews;

import benchful.bin.EarlierVersions;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.day.Days;
import benchful.plans.stored.PlanService;
import benchful.projects.MaterialLine;
import benchful.web.Pages;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
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
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Typing what happened in a class, and seeing it beside the plan. */
@Path("/classes/{id: \\d+}/review")
@Produces(MediaType.TEXT_HTML)
class ReviewsPages {
    private final SpecReader<ReviewSpec> reader;
    private final PlanService plans;
    private final EarlierVersions earlier;
    private final Days days;
    private final Leftovers leftovers;

    ReviewsPages(PlanService plans, EarlierVersions earlier, Days days, Leftovers leftovers) {
        this.days = days;
        this.leftovers = leftovers;
        this.plans = plans;
        this.earlier = earlier;
        this.reader = new SpecReader<>(ReviewSpec.class, ReviewRules::check);
    }

    @CheckedTemplate(basePath = "reviews")
    static class Templates {
        static native TemplateInstance show(ReviewView page);

        static native TemplateInstance unplanned(CraftClass craftClass);

        private Templates() {}
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id) {
        return plans.before(id, plans::planned, () -> shown(id));
    }

    private TemplateInstance shown(long id) {
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        return review(craftClass)
                .map(r -> page(r, form(r)))
                .orElseGet(() -> Templates.unplanned(craftClass));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        return plans.before(id, plans::planned, () -> updated(id, typed));
    }

    private Response updated(long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        Review review = review(craftClass).orElseThrow(NotFoundException::new);
        return post(review).answer(typed, new ReviewTarget(review));
    }

    @POST
    @Path("earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        Review review = Review.of(Pages.toChange(CraftClass.class, id)).orElseThrow(NotFoundException::new);
        EarlierVersions.Wanted wanted = earlier.wanted("review", id, version, form);
        return post(review).putBack(wanted.version().sheet(), wanted.fresh(), new ReviewTarget(review));
    }

    /** What the saved review says was left comes back to the shelf. */
    @POST
    @Path("leftovers")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBackLeftovers(@PathParam("id") long id) {
        leftovers.putBack(Review.of(Pages.toChange(CraftClass.class, id)).orElseThrow(NotFoundException::new));
        return Pages.seeOther("/classes/%d/review#leftovers".formatted(id));
    }

    private SpecPost<ReviewSpec> post(Review review) {
        return new SpecPost<>(reader, form -> page(review, form));
    }

    private TemplateInstance page(Review review, SpecForm form) {
        return Templates.show(ReviewView.of(review, form, materials(review.plan().file()), review.isStored() ? leftovers.of(review) : List.of(), Review.reasons()));
    }

    /** By the names under which they were packed; where that can't be told, by those in the project. */
    private Collection<String> materials(ClassFile file) {
        Set<String> taken = plans.needs(file).needs().keySet();
        return taken.isEmpty() ? file.project().materials().stream().map(MaterialLine::material).toList() : taken;
    }

    private SpecForm form(Review review) {
        return SpecForm.of(reader.written(review.sheet()), review.version());
    }

    /** The stored review, or one filled in from the day beside the plan that was run, or a blank one beside the plan of today; none where the class can't be planned. */
    private Optional<Review> review(CraftClass craftClass) {
        return Review.of(craftClass)
                .or(() -> days.told(craftClass).flatMap(told -> days.plan(craftClass)
                        .map(plan -> Review.of(craftClass, plan, new FromTheDay(told, plan.file().setup().headcount()).sheet()))))
                .or(() -> plans.keep(craftClass, plans.file(craftClass), "reviewed").map(kept -> Review.of(craftClass, kept, ReviewSpec.EMPTY)));
    }
}
