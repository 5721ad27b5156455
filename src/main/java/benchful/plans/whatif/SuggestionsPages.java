package benchful.plans.whatif;

import benchful.classes.CraftClass;
import benchful.plans.stored.PlanService;
import benchful.web.door.Costly;
import benchful.web.tasks.BackgroundTask;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Duration;
import java.util.Optional;

/** What would help a class to end on time: each change planned and simulated, best first, taken by one button. */
@Path("/classes/{id: \\d+}/suggestions")
@Produces(MediaType.TEXT_HTML)
class SuggestionsPages {
    /** A list that is ready so soon is shown at once; else how far it is. */
    private static final Duration AT_ONCE = Duration.ofMillis(1500);

    private final PlanService plans;
    private final AdviceTasks advice;

    SuggestionsPages(PlanService plans, AdviceTasks advice) {
        this.plans = plans;
        this.advice = advice;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance suggestions(SuggestionsPage page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param underway the work on the list; null once it is done
     * @param advice null while it is under way, and where the class can't be planned
     */
    @TemplateData
    record SuggestionsPage(CraftClass craftClass, BackgroundTask<Optional<SuggestionList>> underway, SuggestionList advice) {
        public String back() {
            return "/classes/" + craftClass.id();
        }

        /** A change that moves the end to another day gains no minutes that mean anything. */
        public boolean anotherDay(SuggestionList.Suggestion suggestion) {
            return suggestion.gained().compareTo(Duration.ofHours(12)) > 0;
        }
    }

    @GET
    @Costly
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = plans.craftClass(id).orElseThrow(NotFoundException::new);
        BackgroundTask<Optional<SuggestionList>> task = advice.of(craftClass, plans.file(craftClass));
        Optional<Optional<SuggestionList>> found = task.result(AT_ONCE);
        return Templates.suggestions(new SuggestionsPage(craftClass, found.isPresent() ? null : task, found.flatMap(f -> f).orElse(null)));
    }
}
