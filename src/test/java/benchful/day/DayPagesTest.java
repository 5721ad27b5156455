package benchful.day;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Crowd;
import benchful.web.Visitor;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A class that is run without scripts. */
@QuarkusTest
class DayPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        page = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/day";
        tutor = new Visitor(address).open(page);
    }

    private Element button(String label) {
        Element button = tutor.page().selectFirst("button[aria-label^=\"%s\"]".formatted(label));
        assertThat(button).as(label).isNotNull();
        return button;
    }

    private String now() {
        return tutor.page().select("[data-now] h3").text();
    }

    @Test
    void tellsHowToOpenItOnAPhoneWhereOnlyThisMachineReachesIt() {
        assertThat(tutor.page().select("details.phone").text()).contains("Only this machine reaches Benchful now.", "BENCHFUL_OPEN_NETWORK=true");
        assertThat(tutor.open(page + "/code.png").status()).isEqualTo(404);
    }

    @Test
    void goesFromStepToStep() {
        assertThat(tutor.page().select("[data-behind]").text()).isEqualTo("not begun");
        tutor.press(button("Start: Welcome"));
        assertThat(now()).startsWith("Welcome");
        tutor.press(button("Finish: Welcome"));
        assertThat(now()).doesNotContain("Welcome").isNotEmpty();
        tutor.press(button("Leave out: "));
        assertThat(tutor.page().select("[data-all] .tag").eachText()).startsWith("over", "left out");
    }

    /** The lines of its breaks offer what can be said of each. */
    @Test
    void beginsEndsAndLeavesOutABreak() {
        tutor.press(button("Start: Welcome"));
        assertThat(breakWords()).startsWith("to come").contains("Begins now", "No break").doesNotContain("Break is over");
        tutor.press(button("The break begins"));
        assertThat(breakWords()).contains("min left now", "Break is over").doesNotContain("Begins now", "No break");
        assertThat(tutor.page().select("[data-undo]").text()).isEqualTo("Undo: start the break");
        tutor.press(button("The break is over"));
        assertThat(breakStages()).startsWith("over").doesNotContain("left out");
        assertThat(breakWords()).as("the next one").startsWith("to come");
        tutor.press(tutor.page().selectFirst("[data-undo]"));
        tutor.press(tutor.page().selectFirst("[data-undo]"));
        tutor.press(button("No break"));
        assertThat(breakStages()).startsWith("left out", "to come");
    }

    private List<String> breakStages() {
        return tutor.page().select("[data-breaks] .tag").eachText();
    }

    /** What is seen of breaks. */
    private String breakWords() {
        Element line = tutor.page().selectFirst("[data-breaks] li:not([hidden])").clone();
        line.select("[hidden]").remove();
        return line.text();
    }

    /** Before it is begun by the plan of today, and then by the plan that was kept with it. */
    @Test
    void pausesWhenTheBreaksWerePlacedThatMayMove() throws Exception {
        String craftClass = page.replace("/day", "");
        tutor.open(craftClass + "/setup").type("/breaks/0/latest", "15:00").type("/rest/after", "40 min").type("/rest/lasts", "10 min").press("Save and show the plan");
        byte[] file = tutor.open(craftClass + "/file").bytes();
        List<String> planned = SpecFormat.json().readTree(given().contentType("application/yaml").body(file).post("/api/plan").then().statusCode(200).extract().asString())
                .at("/breaks").findValuesAsText("start").stream().map(start -> start.substring(0, 16)).toList();
        assertThat(planned).as("with those by the rule").hasSizeGreaterThan(3).isSorted();
        assertThat(planned).anyMatch(start -> start.substring(11).compareTo("13:30") >= 0 && start.substring(11).compareTo("15:00") <= 0);
        assertThat(pauses()).isEqualTo(planned);
        tutor.press(button("Start: Welcome"));
        assertThat(pauses()).isEqualTo(planned);
    }

    private List<String> pauses() throws Exception {
        return SpecFormat.json().readTree(tutor.open(page).page().selectFirst("[data-course]").attr("data-course")).at("/pauses").findValuesAsText("start");
    }

    @Test
    void countsNotesRegistersAndTakesBack() {
        tutor.press(button("Start: Welcome")).press(button("One more wants help")).press(button("Not here: "));
        assertThat(tutor.page().select("[data-help]").text()).isEqualTo("1");
        assertThat(tutor.page().select("[data-present]").text()).isEqualTo("8");
        tutor.type("text", "ran out of guard").press("Note it");
        assertThat(tutor.page().select("[data-notes-list]").text()).contains("ran out of guard");
        tutor.press(button("Start: ")).press(tutor.page().selectFirst("[data-undo]"));
        assertThat(tutor.status()).isEqualTo(200);
    }

    @Test
    void saysWhatIsWrongWithANoteAndKeepsTheClass() {
        tutor.type("text", "x".repeat(600)).press("Note it");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("[role=alert]").text()).contains("at most 500 letters");
        tutor.open(page).press("Note it");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("[role=alert]").text()).contains("Write what is to be remembered");
    }

    @Test
    void writesEachTapOnceThoughItIsSentByManyAtOnce() throws Exception {
        String taps = "[{\"id\":\"one\",\"at\":\"2027-03-06T12:30:00.000\",\"kind\":\"start\",\"step\":\"welcome\",\"number\":0,\"text\":\"\"}]";
        assertThat(Crowd.together(4, i -> new Visitor(address).open(page), v -> v.press(sending(v, taps)))).extracting(Visitor::status).containsOnly(200);
        assertThat(tutor.open(page).page().select("form[data-day]").attr("data-log")).containsOnlyOnce("\"id\":\"one\"");
    }

    /** A phone that is seven minutes slow: what it tapped after the other device's tap stays after it. */
    @Test
    void putsTheTapsOfADeviceWhoseClockIsOffAtTheRightTime() throws Exception {
        tutor.press(sending(tutor, "[{\"id\":\"tablet\",\"at\":\"2027-03-06T12:30:00.000\",\"kind\":\"start\",\"step\":\"welcome\"}]"));
        Visitor phone = new Visitor(address).open(page);
        phone.press(sending(phone, "[{\"id\":\"phone\",\"at\":\"2027-03-06T12:25:30.000\",\"kind\":\"finish\",\"step\":\"welcome\"}]", "420000"));
        JsonNode log = SpecFormat.json().readTree(tutor.open(page).page().select("form[data-day]").attr("data-log"));
        assertThat(log.findValuesAsText("id")).containsExactly("tablet", "phone");
        assertThat(log.findValuesAsText("at")).containsExactly("2027-03-06T12:30", "2027-03-06T12:32:30");
        assertThat(now()).doesNotContain("Welcome");
    }

    @Test
    void refusesAClockThatIsNone() {
        tutor.press(sending(tutor, "[]", "soon"));
        assertThat(tutor.status()).isEqualTo(422);
    }

    private static Element sending(Visitor visitor, String taps) {
        return sending(visitor, taps, "");
    }

    private static Element sending(Visitor visitor, String taps, String clock) {
        FormElement form = (FormElement) visitor.page().selectFirst("form[data-day]");
        form.addElement(form.appendElement("input").attr("type", "hidden").attr("name", "clock").attr("value", clock));
        form.addElement(form.appendElement("input").attr("type", "hidden").attr("name", "taps").attr("value", taps));
        return form.selectFirst("button");
    }

    @Test
    void refusesWhatIsNoTap() {
        for (String taps : new String[] {"{", "{}", "[{\"id\":\"<\",\"at\":\"2027-03-06T12:30\",\"kind\":\"start\"}]", "[{\"id\":\"a\",\"at\":\"noon\",\"kind\":\"start\"}]",
            "[{\"id\":\"a\",\"at\":\"2027-03-06T12:30\",\"kind\":\"dance\"}]", "[{\"id\":\"a\",\"at\":\"2027-03-06T12:30\",\"kind\":\"more\",\"number\":99999}]"}) {
            tutor.open(page).press(sending(tutor, taps));
            assertThat(tutor.status()).as(taps).isEqualTo(422);
        }
        assertThat(tutor.open(page).page().select("form[data-day]").attr("data-log")).isEqualTo("[]");
    }

    @Test
    void fillsInTheReviewAndComparesItWithThePlanThatWasRun() {
        String taps = """
                [{"id":"1","at":"2027-03-06T12:35:00","kind":"start","step":"welcome"},{"id":"2","at":"2027-03-06T12:47:00","kind":"finish","step":"welcome"},
                {"id":"3","at":"2027-03-06T12:48:00","kind":"skip","step":"safety"},{"id":"4","at":"2027-03-06T12:50:00","kind":"absent","number":2},
                {"id":"5","at":"2027-03-06T12:51:00","kind":"note","step":"welcome","text":"Shorter next time"},{"id":"6","at":"2027-03-06T12:52:00","kind":"incident","text":"Cut finger"}]""";
        tutor.press(sending(tutor, taps));
        assertThat(tutor.status()).isEqualTo(200);
        String review = page.replace("/day", "/review");
        tutor.open(page.replace("/day", "/setup")).type("/headcount", "14").press("Save and show the plan");
        tutor.open(review);
        assertThat(tutor.field("/began")).startsWith("12:35");
        assertThat(tutor.field("/steps/welcome/ended")).startsWith("12:47");
        assertThat(tutor.field("/steps/welcome/note")).isEqualTo("Shorter next time");
        assertThat(tutor.field("/steps/safety/took")).isEqualTo("0 min");
        assertThat(tutor.field("/students")).isEqualTo("8");
        assertThat(tutor.page().select("textarea[name=/notes]").text()).contains("Incident at 12:52: Cut finger");
        tutor.press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.open(review).field("/steps/welcome/ended")).startsWith("12:47");
    }

    @Test
    void cannotBeRunWhereItCannotBePlanned() {
        tutor.open(page.replace("/day", "/setup")).type("venue", "").type("/tools/bead board", "0").press("Save and show the plan");
        assertThat(tutor.open(page).page().select("h1").text()).isEqualTo("There is no plan to run by");
        assertThat(tutor.open("/classes/999/day").status()).isEqualTo(404);
    }
}
