package benchful.privacy;

import benchful.web.Pages;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * Personal data: removing the students of classes long over, and finding, taking out and erasing one person. What is asked for is sent, never
 * put in an address, so that no name stays in a browser's history.
 */
@Path("/privacy")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
class PrivacyPages {
    private static final int LONGEST_NAME = 120;
    private static final String NO_NAME = "Type the name as it is written in your classes, from 2 to 120 characters.";
    private static final String NO_DAY = "Give the day like 2026-03-31. It may not be later than today.";

    private final People people;
    private final OldStudents oldStudents;
    private final Clock clock;

    PrivacyPages(People people, OldStudents oldStudents, Clock clock) {
        this.people = people;
        this.oldStudents = oldStudents;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "privacy")
    static class Templates {
        static native TemplateInstance index(String day, String name, String dayFault, String nameFault);

        static native TemplateInstance students(LocalDate day, OldStudents.Counted counted, boolean done);

        static native TemplateInstance person(String name, People.Findings findings, boolean done);

        private Templates() {}
    }

    @GET
    public TemplateInstance index() {
        return Templates.index(LocalDate.now(clock).minusYears(1).toString(), "", null, null);
    }

    /** How many students of old classes there are. */
    @POST
    @Path("students")
    public Response count(@FormParam("before") String before) {
        return day(before).map(day -> Pages.again(Templates.students(day, oldStudents.before(day), false))).orElseGet(() -> noDay(before));
    }

    @POST
    @Path("students/removal")
    public Response removeStudents(@FormParam("before") String before) {
        return day(before).map(day -> {
            OldStudents.Counted counted = oldStudents.before(day);
            oldStudents.remove(day);
            return Pages.again(Templates.students(day, counted, true));
        }).orElseGet(() -> noDay(before));
    }

    @POST
    @Path("person")
    public Response find(@FormParam("name") String name) {
        return isName(name) ? Pages.again(Templates.person(name.strip(), people.find(name), false)) : noName(name);
    }

    /** All that is written about a person, as a file. */
    @POST
    @Path("person/file")
    @Produces(MediaType.APPLICATION_JSON)
    public Response export(@FormParam("name") String name) {
        if (!isName(name)) {
            return noName(name);
        }
        ObjectNode file = SpecFormat.json().createObjectNode().put("person", name.strip()).put("taken", LocalDateTime.now(clock).withNano(0).toString());
        People.Findings findings = people.find(name);
        file.set("mentions", SpecFormat.json().valueToTree(findings.mentions()));
        file.set("names_of_things", SpecFormat.json().valueToTree(findings.things()));
        return Response.ok(text(file), MediaType.APPLICATION_JSON).header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"person.json\"").build();
    }

    @POST
    @Path("person/removal")
    public Response erase(@FormParam("name") String name) {
        if (!isName(name)) {
            return noName(name);
        }
        people.erase(name);
        return Pages.again(Templates.person(name.strip(), people.find(name), true));
    }

    private static String text(ObjectNode file) {
        try {
            return SpecFormat.json().writerWithDefaultPrettyPrinter().writeValueAsString(file);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isName(String name) {
        return name != null && name.strip().length() > 1 && name.length() <= LONGEST_NAME && name.matches("(?s).*[\\p{L}\\p{N}].*");
    }

    private Optional<LocalDate> day(String written) {
        try {
            return Optional.ofNullable(written).map(String::strip).map(LocalDate::parse).filter(day -> !day.isAfter(LocalDate.now(clock)));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static Response noDay(String typed) {
        return Pages.faulty(Templates.index(typed == null ? "" : typed, "", NO_DAY, null));
    }

    private Response noName(String typed) {
        return Pages.faulty(Templates.index(LocalDate.now(clock).minusYears(1).toString(), typed == null ? "" : typed, null, NO_NAME));
    }
}
