package benchful.web.forms;

import benchful.web.Pages;
import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.core.Response;
import java.util.List;

/**
 * An answer of the API that is no success: problem details after RFC 9457, with the place of each fault in the input.
 *
 * @param type a URI reference that names the kind of problem
 * @param errors each fault with its JSON Pointer and its line in the file; empty where the problem is not in the input
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Problem(String type, String title, int status, String detail, List<FileFault> errors) {
    public static final String MEDIA_TYPE = "application/problem+json";

    public static Response faulty(SpecReader.Faulty<?> reading) {
        List<FileFault> faults = FileFault.of(reading);
        return response(new Problem(
                "/schema/#faulty", "The input has faults", Pages.UNPROCESSABLE,
                "%d fault%s; each is listed with its place.".formatted(faults.size(), faults.size() == 1 ? "" : "s"), faults));
    }

    public static Response of(int status, String title, String detail) {
        return response(new Problem("about:blank", title, status, detail, List.of()));
    }

    private static Response response(Problem problem) {
        return Response.status(problem.status()).type(MEDIA_TYPE).entity(problem).build();
    }
}
