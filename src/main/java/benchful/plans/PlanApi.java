package benchful.plans;

import benchful.core.lesson.advice.Progress;
import benchful.web.Problem;
import benchful.web.SheetReader;
import benchful.web.door.Costly;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
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
    private final ClassPlanner planner;
    private final ClassFiles files;

    PlanApi(ClassPlanner planner, ClassFiles files) {
        this.planner = planner;
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
    @APIResponse(responseCode = "200", description = "The plan. It may run over the booked hours, and says by how much.", content = @Content(mediaType = "application/json", schema = @Schema(implementation = ClassPlan.class)))
    @APIResponse(responseCode = "422", description = "The file has faults; each with its JSON Pointer (RFC 9457) and its line.", content = @Content(mediaType = Problem.MEDIA_TYPE, schema = @Schema(implementation = Problem.class)))
    public Response plan(
            byte[] file,
            @Parameter(description = "Whether to try out what would help the class to end on time; takes seconds longer.")
                    @QueryParam("suggestions") @DefaultValue("true") boolean suggestions) {
        SheetReader.Reading<ClassFile> reading = files.read(file);
        return reading instanceof SheetReader.Read<ClassFile> good
                ? Response.ok(planned(good.sheet(), suggestions), MediaType.APPLICATION_JSON_TYPE).build()
                : Problem.faulty((SheetReader.Faulty<ClassFile>) reading);
    }

    private ClassPlan planned(ClassFile file, boolean suggestions) {
        ClassPlan plan = planner.withRisk(file, planner.plan(file));
        return suggestions ? plan.withSuggestions(planner.suggestions(file, Progress.NONE).orElse(null)) : plan;
    }
}
