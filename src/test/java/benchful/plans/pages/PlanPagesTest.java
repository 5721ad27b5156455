package benchful.plans.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PlanPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    EntityManager database;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        page = "/classes/" + data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    @Test
    void saysWhetherItFitsAndByHowMuch() {
        tutor.open(page).type("/meetings/0/ends", "14:00").press("Plan again");
        assertThat(tutor.page().select("#fit-answer").text()).startsWith("No. 0 % of such classes end by the booked end, 14:00. Half by 17:");
        tutor.type("/meetings/0/ends", "22:00").press("Plan again");
        assertThat(tutor.page().select("#fit-answer").text()).startsWith("Yes. Nine in ten of such classes end by 17:");
    }

    @Test
    void tellsTheChanceOfEndingOnTime() {
        tutor.open(page);
        assertThat(tutor.page().select("#fit-answer").text()).containsPattern("\\d+ % end by the booked end; half by 17:").contains("simulated classes");
    }

    @Test
    void suggestsWhatWouldHelpAndAppliesItWithOneButton() {
        tutor.open(page).type("/meetings/0/ends", "17:00").press("Plan again").press("Keep");
        openSuggestions();
        assertThat(tutor.rows("table")).anyMatch(r -> r.matches("Book .* more They stay up to .* longer\\. \\|.*Apply.*"));
        tutor.press(tutor.page().selectFirst("button[aria-label^=Apply: Book]"));
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(shown("/meetings/0/ends")).isGreaterThan("17:01");
        tutor.press("Undo");
        assertThat(shown("/meetings/0/ends")).startsWith("17:00");
    }

    @Test
    void storesNothingOfWhatIsTriedUntilItIsKeptAndTakesThatBack() {
        tutor.open(page).type("/headcount", "12").type("/helpers", "2").press("Plan again");
        assertThat(tutor.page().select(".inputs .warn").text()).contains("Tried, not kept.", "headcount: 9 12", "helpers: 1 2");
        assertThat(tutor.page().select("header .lead").text()).startsWith("12 students");
        assertThat(stored("/headcount")).isEqualTo("9");
        tutor.follow("Back to how it was");
        assertThat(tutor.field("/headcount")).isEqualTo("9");

        tutor.type("/headcount", "12").press("Plan again").press("Keep");
        assertThat(stored("/headcount")).isEqualTo("12");
        assertThat(tutor.page().select(".panel.good").first().text()).contains("Kept.", "headcount: 9 12");
        tutor.press("Undo");
        assertThat(stored("/headcount")).isEqualTo("9");
        assertThat(tutor.page().select("[role=status]").text()).contains("Kept.");
    }

    @Test
    void takesBackAMeetingThatASuggestionAdded() {
        tutor.open(page + "/comparison?with=%2Fmeetings%2F1%2Fdate%3D2027-03-13%26%2Fmeetings%2F1%2Fstarts%3D12%3A30%26%2Fmeetings%2F1%2Fends%3D14%3A30%26%2Fprepared_ahead%2F0%3Dstretch");
        tutor.press(tutor.page().selectFirst("button[aria-label=Take: What if 1]"));
        assertThat(stored("/meetings/1/date")).isEqualTo("2027-03-13");
        tutor.press("Undo");
        assertThat(tutor.status()).isEqualTo(200);
        Visitor setup = new Visitor(address).open(page + "/setup");
        assertThat(setup.page().select("[name^=/meetings/1/]")).isEmpty();
        assertThat(setup.page().select("#ahead-stretch[checked]")).isEmpty();
    }

    @Test
    void showsBothVersionsWhenTheClassWasChangedWhileSomethingWasTried() {
        tutor.open(page).type("/headcount", "12").press("Plan again");
        new Visitor(address).open(page).type("/helpers", "3").press("Plan again").press("Keep");
        tutor.press("Keep");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.rows(".summary.stale table")).contains("headcount | 9 | 12", "helpers | 3 | 1");
        assertThat(stored("/headcount")).isEqualTo("9");
        assertThat(stored("/helpers")).isEqualTo("3");
    }

    @Test
    void offersNoUndoOnceTheClassWasChangedAgain() {
        tutor.open(page).type("/headcount", "12").press("Plan again").press("Keep");
        String kept = tutor.answer().url().getFile();
        new Visitor(address).open(page).type("/helpers", "3").press("Plan again").press("Keep");
        assertThat(tutor.open(kept).page().select("button").eachText()).doesNotContain("Undo");
    }

    @Test
    void keepsAnOrderOfHerOwnAndSaysWhatItCosts() {
        tutor.open(page).press("Keep this order");
        assertThat(tutor.page().select("#wishes").text()).matches("Your own order: Welcome.*, then .*\\. This costs no time\\. Leave all to the plan Change what you ask for");
        assertThat(tutor.page().select("button").eachText()).contains("Undo").doesNotContain("Keep this order");
        assertThat(tutor.page().select(".differences").first().text()).startsWith("own order 1: Welcome, and what we make").doesNotContain("welcome");
        assertThat(stored("/own_order/1")).isNotEmpty();
        tutor.press("Leave all to the plan");
        assertThat(stored("/own_order/0")).isEmpty();

        tutor.open(page + "/setup").type("/own_order/0", "tidy").press("One more step").type("/own_order/1", "welcome").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text()).contains("“Welcome, and what we make” must come sooner");
        tutor.press(tutor.page().selectFirst("button[aria-label=Move step 2 of your order up]")).press("Save and show the plan");
        assertThat(tutor.page().select("#wishes").text()).startsWith("Your own order: Welcome, and what we make, then ");
        assertThat(tutor.page().select("button").eachText()).doesNotContain("Keep this order");
    }

    @Test
    void beginsAStepAtATimeOfHerOwnAndSaysWhatItCosts() {
        LocalTime later = LocalTime.parse(stored("/meetings/0/starts")).plusMinutes(25);
        tutor.open(page).type("/own_times/0/step", "welcome").type("/own_times/0/at", later.toString()).press("Begin it then");
        assertThat(tutor.page().select("#wishes").text()).matches("Your own times: Welcome, and what we make at %s\\. This costs 2[45] min: left to the plan, the class ends \\d\\d:\\d\\d\\..*".formatted(later));
        assertThat(tutor.page().select("button").eachText()).contains("Undo");
        assertThat(stored("/own_times/0/step")).isEqualTo("welcome");

        tutor.type("/own_times/1/step", "tidy").type("/own_times/1/at", "05:00").press("Begin it then");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("#ask[open] .fault").text()).contains("Meeting 1 is from ", "Give a time within it.");
        assertThat(tutor.page().select("#ask [name=/own_times/1/at]").attr("value")).isEqualTo("05:00");
        tutor.type("/own_times/1/at", "").press("Begin it then");
        assertThat(tutor.status()).as("half a wish is refused").isEqualTo(422);

        tutor.open(page).press("Leave all to the plan");
        assertThat(tutor.page().select("#wishes")).isEmpty();
        assertThat(stored("/own_times/0/at")).isEmpty();
    }

    /** In the small form on the page. */
    private String shown(String field) {
        return tutor.page().select("form.inputs [name=%s]".formatted(field)).val();
    }

    /** As somebody else sees the class. */
    private String stored(String field) {
        return new Visitor(address).open(page + "/setup").field(field);
    }

    /** As a page without scripts shows itself again until the list is there. */
    private void openSuggestions() {
        do {
            tutor.open(page + "/suggestions");
        } while (tutor.page().selectFirst("[data-awaited]") != null);
    }

    @Test
    void comparesWhatIfsSideBySideAndTakesOne() {
        tutor.open(page).type("/headcount", "10").press("Compare with now");
        tutor.type("/helpers", "2").press("Compare with now");
        assertThat(tutor.page().select("table.comparison thead th").eachText()).containsExactly("As it is", "What if 1", "What if 2");
        assertThat(tutor.rows("table.comparison")).anyMatch(r -> r.startsWith("What differs | – | headcount: 9 10 | helpers:"))
                .anyMatch(r -> r.matches("Ends by the booked end \\| \\d+ % \\| \\d+ % \\| \\d+ %"));
        assertThat(tutor.page().select("figure svg")).hasSize(3);
        tutor.press(tutor.page().selectFirst("button[aria-label=Take: What if 1]"));
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(shown("/headcount")).isEqualTo("10");
    }

    @Test
    void saysWhyAWhatIfCannotBeCompared() {
        tutor.open(page).type("/headcount", "0").press("Compare with now");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/headcount")).isEqualTo("0");
        assertThat(tutor.open(page + "/comparison?with=%2Fheadcount%3D0").page().select(".summary").text()).contains("Enter a number of students");
    }

    @Test
    void recomputesWhenAnInputChanges() {
        tutor.open(page);
        String before = need("hook clasp with eye");
        assertThat(before).startsWith("hook clasp with eye | 11 |");
        tutor.type("/headcount", "12").press("Plan again");
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(need("hook clasp with eye")).startsWith("hook clasp with eye | 14 |");
    }

    @Test
    void opensEachNumberToItsReason() {
        tutor.open(page);
        assertThat(tutor.page().select("#materials ~ .scroll details").text())
                .contains("students in size “42 cm” take")
                .contains("The demonstration piece");
        assertThat(tutor.page().select("#plan ~ .scroll details").text()).contains("the last of 9 is expected after");
    }

    @Test
    void showsWhatGoesOnWhileNoMeetingIsHeld() {
        tutor.open("/classes/" + data.classTitled("Leaf-print dishes"));
        assertThat(tutor.page().select("#between").text()).isEqualTo("Between the meetings, and after");
        assertThat(tutor.rows("#between + .scroll table")).anyMatch(r -> r.matches(".*12 The tutor loads the kiln \\| you \\| 32 min \\| by .*, 18:30.*"))
                .anyMatch(r -> r.matches(".*13 First firing, and the kiln cools \\| nobody \\| 48 h .*"))
                .anyMatch(r -> r.matches(".*22 Collect your dish \\| students, or the post.*"));
        tutor.open(page);
        assertThat(tutor.page().select("#between")).as("a class of one afternoon that leaves nothing to do").isEmpty();
    }

    @Test
    void keepsAWrongInputInItsFieldAndShowsTheStoredPlan() {
        tutor.open(page).type("/headcount", "0").press("Plan again");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/headcount")).isEqualTo("0");
        assertThat(tutor.page().select(".lead").first().text()).startsWith("9 students");
    }

    @Test
    void warnsOfAgeSeatsAndSupervision() {
        tutor.open(page).type("/headcount", "30").press("Plan again");
        assertThat(tutor.page().select("#fit-answer + .panel").text()).contains("Seats.");
    }

    @Test
    void showsContradictionsInPlaceOfAPlan() {
        tutor.open(page + "/setup").type("venue", "").type("/tools/bead board", "0").press("Save and show the plan");
        assertThat(tutor.page().select("#fit-answer").text()).contains("It can’t be planned yet").contains("bead board");
        assertThat(tutor.page().select("#materials ~ .scroll table tr")).hasSizeGreaterThan(5);
    }

    @Test
    void leavesOutABreakThatLiesOutsideTheHoursAndSaysSo() {
        tutor.open(page).type("/meetings/0/ends", "14:00").press("Plan again");
        assertThat(tutor.page().select("#fit-answer + .panel").text()).contains("The break at").contains("does not fit into the hours");
    }

    @Test
    void exportsAFileThatThePlanningApiTakes() {
        byte[] file = tutor.open(page + "/file").bytes();
        given().contentType("application/yaml").body(file).when().post("/api/plan").then().statusCode(200)
                .body("materials.kits.size()", equalTo(11));
    }

    @Test
    void bringsAnExportedClassBackWithAllThatWasRemovedSince() {
        byte[] file = tutor.open(page + "/file").bytes();
        tutor.open("/").press("Remove the sample classes");
        assertThat(tutor.open(page).status()).isEqualTo(404);
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", file).press("Import");
        assertThat(tutor.path()).matches("/classes/\\d+");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Knotted strand, Saturday afternoon");
        assertThat(tutor.page().select("#fit-answer").text()).startsWith("Yes. Nine in ten of such classes end by 17:");
        assertThat(need("hook clasp with eye")).startsWith("hook clasp with eye | 11 |");
    }

    @Test
    void saysWhyAFileIsNoClass() {
        tutor.open("/classes/imports").press("Import");
        assertThat(tutor.faults().toString()).contains("Choose a file first.");
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", "class: {headcount: 0}".getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text()).contains("Enter a number of students from 1 to 200").contains("line 1");
    }

    @Test
    void givesEveryPageOfASampleClass() {
        tutor.open("/classes").page().select("main table a").eachAttr("href")
                .forEach(link -> assertThat(tutor.open(link).status()).as(link).isEqualTo(200));
    }

    /** The clasp is neither sold nor on the shelf any more. */
    @Test
    void saysWhatNobodySellsUntilItIsThere() {
        QuarkusTransaction.requiringNew().run(() -> {
            String clasp = "(select id from material where name = 'hook clasp with eye')";
            assertThat(database.createNativeQuery("delete from offer where material_id in " + clasp).executeUpdate()).isPositive();
            database.createNativeQuery("delete from stock_movement where material_id in " + clasp).executeUpdate();
        });
        tutor.open(page);
        assertThat(tutor.page().select("#buy ~ .warn legend").text()).isEqualTo("hook clasp with eye: 12 missing");
        tutor.type("/sources/0/found", "12").press("Write it down and work it out again");
        assertThat(tutor.page().select("form.sources")).isEmpty();
    }

    private String need(String material) {
        return tutor.rows("#materials ~ .scroll table").stream().filter(r -> r.startsWith(material)).findFirst().orElseThrow();
    }
}
