package benchful.plans.pages;

import benchful.classes.ClassFile;
import benchful.core.Progress;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.risk.Promised;
import benchful.plans.ClassFileReader;
import benchful.plans.ClassPlan;
import benchful.plans.ClassPlanner;
import benchful.plans.whatif.ClassAdvisor;
import benchful.web.Pages;
import benchful.web.Trouble;
import benchful.web.door.Costly;
import benchful.web.forms.Problem;
import benchful.web.forms.SpecReader;
import benchful.web.tasks.Asker;
import benchful.web.tasks.Tried;
import benchful.web.tasks.Workroom;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.eclipse.microprofile.openapi.annotations.ExternalDocumentation;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The plan for programs: a class file in, the whole computed plan out, nothing stored. */
@Path("/api/plan")
@Tag(name = "Plan")
public class PlanApi {
    /** Far more than any class takes that somebody could teach. */
    private static final Duration LONGEST = Duration.ofSeconds(60);
    private static final String TOO_LONG = "It was given up after %d s. Ask without suggestions, or for fewer students, steps or pieces.".formatted(LONGEST.toSeconds());
    /** Changes that were not tried when the client left or the time was up. */
    private static final Progress UNTIL_NOBODY_WAITS = new Progress() {
        @Override
        public boolean isGivenUp() {
            Asker.check();
            return false;
        }

        @Override
        public void tell(int done, int all) {
            // the answer comes in one piece
        }
    };

    private final ClassPlanner planner;
    private final LessonPlanner lessons;
    private final Workroom room;
    private final ClassFileReader files;

    PlanApi(ClassPlanner planner, LessonPlanner lessons, Workroom room, ClassFileReader files) {
        this.room = room;
        this.planner = planner;
        this.lessons = lessons;
        this.files = files;
    }

    @POST
    @Costly
    @Consumes({"application/yaml", "application/x-yaml", "text/yaml", MediaType.APPLICATION_JSON})
    @Produces({MediaType.APPLICATION_JSON, Problem.MEDIA_TYPE})
    @Operation(
            summary = "Plans a class",
            description = "Takes a class file (YAML or JSON, /schema/class-1.json) and answers the whole computed plan: the steps on "
                    + "the clock with proof or bound, the chance of ending on time, what would help, sizes, kits, materials with their reasons, cutting and buying. Nothing is stored.")
    @RequestBody(
            required = true,
            content = {
                @Content(mediaType = "application/yaml", schema = @Schema(externalDocs = @ExternalDocumentation(url = "/schema/class-1.json"))),
                @Content(mediaType = "application/json", schema = @Schema(externalDocs = @ExternalDocumentation(url = "/schema/class-1.json")))
            })
    @APIResponse(responseCode = "200", description = "The plan. It may run over the booked hours, and says by how much.", content = @Content(mediaType = "application/json", schema = @Schema(implementation = PlanAnswer.class)))
    @APIResponse(responseCode = "422", description = "The file has faults; each with its JSON Pointer (RFC 9457) and its line.", content = @Content(mediaType = Problem.MEDIA_TYPE, schema = @Schema(implementation = Problem.class)))
    public Response plan(
            byte[] file,
            @Parameter(description = "Whether to try out what would help the class to end on time; takes seconds longer.")
                    @QueryParam("suggestions") @DefaultValue("false") boolean suggestions) {
        SpecReader.Reading<ClassFile> reading = files.read(file);
        return reading instanceof SpecReader.Read<ClassFile> good ? answer(good.sheet().withPhotos(null), suggestions)
                : Problem.faulty((SpecReader.Faulty<ClassFile>) reading);
    }

    private Response answer(ClassFile file, boolean suggestions) {
        BooleanSupplier late = within(LONGEST);
        try {
            return answer(Tried.of(() -> Asker.until(late, () -> planned(file, suggestions)), failure -> Trouble.of("This class", List.of(), failure)));
        } catch (CancellationException givenUp) {
            if (late.getAsBoolean()) {
                return Problem.of(Pages.UNPROCESSABLE, "This class takes too long to plan", TOO_LONG);
            }
            throw givenUp;
        }
    }

    private static BooleanSupplier within(Duration longest) {
        long begun = System.nanoTime();
        return () -> System.nanoTime() - begun > longest.toNanos();
    }

    private static Response answer(Tried<PlanAnswer> tried) {
        return tried instanceof Tried.Worked<PlanAnswer> worked ? Response.ok(worked.value(), MediaType.APPLICATION_JSON_TYPE).build()
                : Problem.of(Pages.UNPROCESSABLE, "This class can't be planned", ((Tried.Failed<PlanAnswer>) tried).trouble().sentence());
    }

    private PlanAnswer planned(ClassFile file, boolean suggestions) {
        ClassPlan plan = planner.plan(file);
        boolean advised = suggestions && plan.lesson() != null;
        LessonRequest asked = planner.rested(file);
        return new PlanAnswer(plan, advised ? room.work(() -> new ClassAdvisor(lessons, file).suggestions(asked, new Promised(plan.lesson(), plan.risk()), UNTIL_NOBODY_WAITS)) : null);
    }
}
