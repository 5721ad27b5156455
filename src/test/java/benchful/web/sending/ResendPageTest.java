package benchful.web.sending;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Nothing typed is lost to a key that does not fit, and keys fit for as long as the browser keeps its name. */
@QuarkusTest
class ResendPageTest {
    @TestHTTPResource("/") URL start;

    @Inject SampleData data;
    @Inject AgroalDataSource database;
    @Inject FormSecret secret;

    @BeforeEach
    void nothing() {
        data.nothing();
    }

    @Test
    void showsAFormAgainWithAllThatWasTypedAndSavesItFromThere() {
        Visitor tutor = new Visitor(start).open("/materials/new");
        tutor.page().select("input[name=form-key]").val("");
        tutor.type("/name", "Cord “fine” & <strong>").type("/unit", "m").press("Save");
        assertThat(tutor.status()).isEqualTo(403);
        assertThat(tutor.rows("table")).contains("name | Cord “fine” & <strong>", "unit | m");
        tutor.press("Send it again");
        assertThat(tutor.path()).matches("/materials/\\d+");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Cord “fine” & <strong>");
    }

    @Test
    void passesOverAPartThatNamesNoField() {
        String body = "--x\r\nContent-Disposition: form-data; name=\"\"\r\n\r\na\r\n--x\r\nContent-Disposition: form-data\r\n\r\nb\r\n--x--\r\n";
        Response answer = RestAssured.given().contentType("multipart/form-data; boundary=x").body(body.getBytes(StandardCharsets.US_ASCII)).post("/projects");
        assertThat(answer.statusCode()).isBetween(400, 499);
        assertThat(answer.body().asString()).doesNotContain("Something went wrong");
    }

    @Test
    void showsAFormWithPicturesAgainAndAsksForTheFilesOnly() {
        Visitor tutor = new Visitor(start).open("/projects/new").press("Add a picture");
        tutor.page().select("input[name=form-key]").val("");
        String steps = "Thread it.\nKnot it.\n\n*Twice.*";
        tutor.type("/name", "Long-open ring").type("/summary", steps)
                .pick("file:/pictures/0", "ring.png", "image/png", new byte[] {1, 2, 3}).press("Save the project");
        assertThat(tutor.status()).isEqualTo(403);
        assertThat(tutor.page().select("form").attr("enctype")).isEqualTo("multipart/form-data");
        assertThat(tutor.page().select("label").eachText()).containsExactly("Choose ring.png again");
        assertThat(tutor.field("/summary")).isEqualToIgnoringNewLines(steps);
        tutor.press("Send it again");
        assertThat(tutor.answer().body()).contains("Long-open ring", "Knot it.");
    }

    /** As a browser does that was told to forget its cookies while the form was open. */
    @Test
    void takesTheFormOfABrowserThatLostItsCookieAfterOneMorePress() {
        SentForm form = SentForm.on("/materials/new", "form.sheet").with("/name", "Wire").with("/unit", "m").withoutCookies();
        Response shown = form.send();
        assertThat(shown.statusCode()).isEqualTo(403);
        String key = Jsoup.parse(shown.asString()).select("input[name=form-key]").val();
        assertThat(key).as("the same sending, signed for the new cookie").startsWith(form.key() + ".").isNotEqualTo(form.fields().get("form-key"));
        assertThat(new SentForm(form.action(), shown.cookies(), form.fields()).with("form-key", key).send().statusCode()).isEqualTo(303);
    }

    @Test
    void takesNoKeyOfAnotherBrowser() {
        SentForm mine = SentForm.on("/materials/new", "form.sheet");
        SentForm another = SentForm.on("/materials/new", "form.sheet").with("/name", "Theirs").with("/unit", "m");
        assertThat(new SentForm(another.action(), mine.cookies(), another.fields()).send().statusCode()).isEqualTo(403);
        assertThat(another.send().statusCode()).isEqualTo(303);
    }

    @Test
    void namesABrowserForLongAndHidesTheNameFromScriptsAndOtherSites() {
        String cookie = RestAssured.get("/materials/new").header("Set-Cookie");
        assertThat(cookie).startsWith("benchful=").containsIgnoringCase("HttpOnly").contains("SameSite=Strict", "Path=/").containsPattern("Max-Age=3[0-9]{7}");
        String id = cookie.split("[=;]")[1];
        assertThat(RestAssured.given().cookie("benchful", id).get("/materials/new").header("Set-Cookie")).isNull();
        assertThat(RestAssured.given().header("Sec-Fetch-Site", "cross-site").header("Sec-Fetch-Mode", "navigate").header("Sec-Fetch-Dest", "document")
                .get("/materials/new").header("Set-Cookie")).as("the browser may keep one to itself").isNull();
    }

    /** A restart, and another instance: the secret comes from the database. */
    @Test
    void signsTheSameAfterARestart() throws SQLException {
        FormSecret restarted = new FormSecret(database);
        restarted.load(null);
        assertThat(restarted.sign("text")).isEqualTo(secret.sign("text")).isNotEqualTo(secret.sign("another"));
    }

    @Test
    void keepsAFormThatHasNothingInItFromDoingAnything() {
        Response answer = RestAssured.given().contentType("application/x-www-form-urlencoded").body("").post("/samples");
        assertThat(answer.statusCode()).isEqualTo(403);
        Document page = Jsoup.parse(answer.asString());
        assertThat(page.select("h1").text()).isEqualTo("Nothing was lost: send it again");
        assertThat(page.select(".lead").text()).contains("leave this page");
    }
}
