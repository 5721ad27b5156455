package benchful.plans;

import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.lesson.advice.Advice;
import benchful.core.lesson.advice.Suggestion;
import benchful.web.Formats;
import benchful.web.Pages;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What would help a class to end on time: each change planned and simulated, best first, applied by one button. */
@Path("/classes/{id: \\d+}/suggestions")
@Produces(MediaType.TEXT_HTML)
class SuggestionsPages {
    private final PlanService plans;
    private final ClassPlanner planner;

    SuggestionsPages(PlanService plans, ClassPlanner planner) {
        this.plans = plans;
        this.planner = planner;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance suggestions(SuggestionsPage page);

        private Templates() {}
    }

    /** What the page shows; no advice where the class can't be planned. */
    @TemplateData
    record SuggestionsPage(CraftClass craftClass, Advice advice, List<Line> lines, List<Fault> faults, boolean stale) {}

    /**
     * One suggestion.
     *
     * @param words what its button sends; empty where it can't be applied by one
     */
    @TemplateData
    record Line(Suggestion suggestion, List<String> words) {
        /** A change that moves the end to another day gains no minutes that mean anything. */
        public String gained() {
            boolean anotherDay = suggestion.gained().compareTo(Duration.ofHours(12)) > 0;
            return anotherDay ? "ends another day" : Formats.words(suggestion.gained());
        }

        static Line of(Suggestion suggestion) {
            List<String> words = suggestion.changes().stream().map(SetupChange::word).flatMap(Optional::stream).toList();
            return new Line(suggestion, words.size() == suggestion.changes().size() ? words : List.of());
        }
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        return page(existing(id), List.of(), false);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        CraftClass craftClass = existing(id);
        if (Pages.version(form) != craftClass.version()) {
            return Pages.stale(page(craftClass, List.of(), true));
        }
        ClassSetup changed = changed(craftClass.setup(), form.getOrDefault("change", List.of()));
        List<Fault> faults = SetupRules.check(changed, craftClass.project().toSheet());
        if (!faults.isEmpty()) {
            return Pages.faulty(page(craftClass, faults, false));
        }
        craftClass.plan(changed, craftClass.venue());
        craftClass.persistAndFlush();
        return Pages.seeOther("/classes/" + id);
    }

    private static ClassSetup changed(ClassSetup setup, List<String> words) {
        try {
            ClassSetup changed = setup;
            for (String word : words) {
                changed = SetupChange.applied(changed, word);
            }
            return changed;
        } catch (IllegalArgumentException | DateTimeException | ArrayIndexOutOfBoundsException tampered) {
            throw new NotFoundException(tampered);
        }
    }

    private TemplateInstance page(CraftClass craftClass, List<Fault> faults, boolean stale) {
        Advice advice = planner.advice(plans.file(craftClass)).orElse(null);
        List<Line> lines = advice == null ? List.of() : advice.suggestions().stream().map(Line::of).toList();
        return Templates.suggestions(new SuggestionsPage(craftClass, advice, lines, faults, stale));
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }
}
