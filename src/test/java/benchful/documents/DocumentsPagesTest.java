package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.documents.pdf.PdfReading;
import benchful.plans.stored.KeptPlan;
import benchful.web.StoredEntity;
import benchful.web.Visitor;
import benchful.web.tasks.BackgroundTask;
import benchful.web.tasks.BackgroundTasks;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URL;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@QuarkusTest
class DocumentsPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private String page;

    @BeforeEach
    void samples() {
        data.onlySamples();
        page = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/documents";
    }

    @ParameterizedTest
    @EnumSource(PrintOut.class)
    void printsEverythingOfASampleClass(PrintOut what) throws Exception {
        Response pdf = RestAssured.given().queryParam("paper", "letter").get(page + "/" + what.slug() + ".pdf");
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(pdf.contentType()).startsWith("application/pdf");
        try (PdfReading reading = PdfReading.of(pdf.asByteArray())) {
            assertThat(reading.pages()).isPositive();
            assertThat(reading.text()).contains(what == PrintOut.LABELS ? "Zofia Błażejewska" : "Knotted strand");
        }
    }

    @Test
    void offersEveryPrintOutInOneForm() {
        Visitor tutor = new Visitor(address).open(page);
        assertThat(tutor.page().select("button[formaction]").eachAttr("formaction"))
                .hasSize(PrintOut.values().length + 1).startsWith(page + "/all.pdf")
                .contains(page + "/handout.pdf", page + "/labels.pdf", page + "/register.pdf");
        assertThat(tutor.page().select("#print-address").val()).as("an address that only this machine reaches makes no codes").isEmpty();
    }

    @Test
    void printsHandoutsOfAProjectThatNoClassTeaches() throws Exception {
        Visitor tutor = new Visitor(address).open("/projects");
        String project = tutor.page().select("a:contains(Resin pendant)").attr("href");
        tutor.open(project).follow("Print handouts");
        assertThat(tutor.page().select("main h3").eachText()).containsExactly("Round 25 mm", "Oval 18 x 25 mm", "Round 30 mm");
        assertThat(tutor.page().select("main h3 + p").first().text()).contains("g casting resin part a; ").contains("Tools: ");
        tutor.type("size", "Oval 18 x 25 mm").type("paper", "letter").press("Print handouts");
        try (PdfReading pdf = PdfReading.of(tutor.bytes())) {
            assertThat(pdf.barriers()).isEmpty();
            assertThat(pdf.text()).contains("Size Oval 18 x 25 mm").doesNotContain("Round 30 mm").contains("The resin cures").contains("You will need");
        }
        String print = project + "/handouts/handout.pdf";
        try (PdfReading pdf = PdfReading.of(RestAssured.get(print).asByteArray())) {
            assertThat(pdf.text()).contains("Size Round 25 mm", "Size Oval 18 x 25 mm", "Size Round 30 mm");
        }
        assertThat(tutor.open(print + "?size=none").status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text()).contains("Choose one of the sizes, or all.");
        assertThat(RestAssured.get("/projects/99999999/handouts").statusCode()).isEqualTo(404);
    }

    @Test
    void printsOnTheRegisterWhomToCallAndKeepsItNowhereElse() throws Exception {
        new Visitor(address).open(page.replace("/documents", "/setup")).type("/students/0/emergency/name", "Kazimierz B.")
                .type("/students/0/emergency/phone", "+48 600 000 000").press("Save and show the plan");
        try (PdfReading register = PdfReading.of(RestAssured.get(page + "/register.pdf").asByteArray())) {
            assertThat(register.text()).contains("Kazimierz B. +48 600 000 000");
        }
        RestAssured.get(page + "/plan.pdf").then().statusCode(200);
        CraftClass craftClass = QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(CraftClass.class, data.classTitled("Knotted strand, Saturday")).orElseThrow());
        ClassFile kept = QuarkusTransaction.requiringNew().call(() -> KeptPlan.latest(craftClass)).orElseThrow().file();
        assertThat(kept.setup().students()).hasSize(9).allSatisfy(student -> assertThat(student.emergency()).isNull());
    }

    @Test
    void warnsOfWhatGoesHomeUncuredBeforePrinting() {
        Visitor tutor = new Visitor(address).open("/classes/" + data.classTitled("Pamphlet notebook") + "/documents");
        assertThat(tutor.page().select(".warn li").eachText()).anyMatch(warning -> warning.startsWith("“The spine dries through at home” ends at home"));
    }

    @Test
    void givesTheHandoutThatAKitsCodeOpens() throws Exception {
        byte[] pdf = RestAssured.get(page + "/handout.pdf?kit=7").asByteArray();
        try (PdfReading reading = PdfReading.of(pdf)) {
            assertThat(reading.text()).contains("for Harriet Dunmore, seat 7").doesNotContain("Zofia");
        }
        assertThat(RestAssured.get(page + "/handout.pdf?kit=99").statusCode()).isEqualTo(404);
    }

    /** Nine handouts are more than a browser is kept waiting for: a page tells how far they are, and gives way to the PDF. */
    @Test
    void tellsHowFarALongPrintOutIsUntilItOpens() throws Exception {
        String all = page + "/handout.pdf?for=student";
        Response answer = RestAssured.get(all);
        for (int i = 0; i < 120 && answer.contentType().startsWith("text/html"); i++) {
            Document waiting = Jsoup.parse(answer.asString());
            assertThat(waiting.select("noscript").html()).contains("http-equiv=\"refresh\"");
            assertThat(waiting.select("[role=status]").text()).startsWith("The PDF opens here");
            assertThat(waiting.select("form:has(button:contains(Stop))").attr("action")).isEqualTo(page + "/handout/cancellation");
            answer = RestAssured.get(all);
        }
        assertThat(answer.contentType()).isEqualTo("application/pdf");
        try (PdfReading reading = PdfReading.of(answer.asByteArray())) {
            assertThat(reading.text()).contains("for Zofia Błażejewska").contains("for Søren Fauldby");
        }
    }

    /** One press for the lot: it takes a page that tells how far it is, and opens as one PDF that passes as each by itself does. */
    @Test
    void printsEverythingAtOnePress() throws Exception {
        Response answer = RestAssured.get(page + "/all.pdf?for=size");
        for (int i = 0; i < 120 && answer.contentType().startsWith("text/html"); i++) {
            Document waiting = Jsoup.parse(answer.asString());
            assertThat(waiting.select("h1").text()).isEqualTo("Everything for the class");
            assertThat(waiting.select("form:has(button:contains(Stop))").attr("action")).isEqualTo(page + "/all/cancellation");
            answer = RestAssured.get(page + "/all.pdf?for=size");
        }
        assertThat(answer.contentType()).isEqualTo("application/pdf");
        try (PdfReading reading = PdfReading.of(answer.asByteArray())) {
            assertThat(reading.barriers()).isEmpty();
            assertThat(reading.text()).containsSubsequence("Shopping list", "Cutting sheet", "Packing list", "Tutor’s checklist", "Risk assessment", "Register", "Step by step", "Review sheet", "Spare 1");
        }
    }

    @Test
    void saysWhyALongPrintOutCameToNothingAndOffersItAgain() {
        BackgroundTask<PrintedFile> failed = new BackgroundTasks(Runnable::run).send("handout", 1, task -> {
            throw new OutOfMemoryError();
        });
        String shown = QuarkusTransaction.requiringNew().call(() -> DocumentsPages.Templates.progress(
                new DocumentsPages.ProgressPage(CraftClass.<CraftClass>findAll().firstResult(), Wanted.of(PrintOut.HANDOUT), failed)).render());
        Document answer = Jsoup.parse(shown);
        assertThat(answer.select("[role=alert]").text()).contains("could not be finished", "ran out of memory", "smaller parts");
        assertThat(answer.select("a:contains(Try again)")).hasSize(1);
        assertThat(answer.select("[data-awaited], noscript meta")).isEmpty();
    }

    @Test
    void saysAtTheFieldWhatCannotBePrinted() {
        Visitor tutor = new Visitor(address).open(page + "/labels.pdf?sheet=own&columns=3&rows=x&width=80&height=30&left=5&top=5&pitchX=80&pitchY=30&start=0");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("#print-rows-fault").text()).isEqualTo("Enter a whole number from 1 to 40.");
        assertThat(tutor.page().select("#print-start-fault").text()).contains("from 1 to");
        assertThat(tutor.page().select("#print-width").val()).isEqualTo("80");
    }

    @Test
    void refusesSheetsThatDoNotFitThePaper() {
        Visitor tutor = new Visitor(address).open(page + "/labels.pdf?sheet=own&columns=4&rows=5&width=80&height=30&left=5&top=5&pitchX=80&pitchY=30");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("#print-columns-fault").text()).isEqualTo("4 labels across do not fit on A4.");
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.ValueSource(strings = {"paper=a5", "version=tiny", "sheet=77", "right=NaN", "down=-99", "address=javascript:alert(1)", "start=1e9"})
    void answersAbsurdOptionsWithTheFormNeverWithAFault(String query) {
        assertThat(RestAssured.get(page + "/labels.pdf?" + query).statusCode()).isEqualTo(422);
    }

    @Test
    void answersUnknownPrintOutsWith404() {
        assertThat(RestAssured.get(page + "/poster.pdf").statusCode()).isEqualTo(404);
        assertThat(RestAssured.get("/classes/999999/documents").statusCode()).isEqualTo(404);
    }
}
