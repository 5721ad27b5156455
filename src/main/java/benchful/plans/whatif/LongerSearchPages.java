package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.lesson.LessonPlan;
import benchful.plans.ClassPlanner;
import benchful.plans.stored.PlanService;
import benchful.web.Formats;
import benchful.web.Pages;
import benchful.web.door.Costly;
import benchful.web.tasks.BackgroundTask;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;

/** A search of minutes for a better order of a class's steps: begun, watched, ended sooner, and its order taken by one button. */
@Path("/classes/{id: \\d+}/search")
@Produces(MediaType.TEXT_HTML)
class LongerSearchPages {
    private static final Duration AT_ONCE = Duration.ofMillis(1500);

    private final PlanService plans;
    private final ClassPlanner planner;
    private final LongerSearch searches;

    LongerSearchPages(PlanService plans, ClassPlanner planner, LongerSearch searches) {
        this.plans = plans;
        this.planner = planner;
        this.searches = searches;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance search(SearchPage page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param lesson the class as it is planned; null where it can't be
     * @param task the search; null where the class can't be planned
     * @param found what it came to; null while it goes on
     */
    @TemplateData
    record SearchPage(CraftClass craftClass, LessonPlan lesson, BackgroundTask<LongerSearch.Found> task, LongerSearch.Found found) {
        public String back() {
            return "/classes/" + craftClass.id();
        }

        /** Where the search is now. */
        public String meanwhile() {
            return task.soFar().map(far -> "The best order so far is expected to end at %s; none can end before %s.".formatted(time(far.proof().finish()), time(far.proof().bound())))
                    .orElse("Another search is going on; this one comes next.");
        }

        private String time(LocalDateTime time) {
            return Formats.clockAfter(time, lesson.start());
        }

        /** Whether the times to promise are better for it. */
        public boolean isSooner() {
            return found.ends().isBefore(lesson.finish());
        }

        public Duration gained() {
            return Duration.between(found.ends(), lesson.finish());
        }

        public boolean isShortest() {
            return found.proof().isShortest();
        }

        public Duration gap() {
            return found.proof().gap();
        }

        /** What takes the order. */
        public WhatIf taken() {
            return new WhatIf(Map.of("/found_order", found.order()));
        }
    }

    @GET
    @Costly
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = plans.craftClass(id).orElseThrow(NotFoundException::new);
        ClassFile file = plans.file(craftClass);
        LessonPlan lesson = planner.timing(file).lesson();
        if (lesson == null) {
            return Templates.search(new SearchPage(craftClass, null, null, null));
        }
        BackgroundTask<LongerSearch.Found> task = searches.of(id, file);
        Optional<LongerSearch.Found> found = task.result(AT_ONCE);
        return Templates.search(new SearchPage(craftClass, lesson, task, found.orElse(null)));
    }

    /** Ends the search with what it has found. */
    @POST
    @Path("end")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response end(@PathParam("id") long id) {
        CraftClass craftClass = plans.craftClass(id).orElseThrow(NotFoundException::new);
        searches.sent(id, plans.file(craftClass)).ifPresent(BackgroundTask::isToEnd);
        return Pages.seeOther("/classes/" + id + "/search");
    }
}
