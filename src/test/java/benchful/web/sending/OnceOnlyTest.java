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
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A form is taken once, however often and wherever its button is pressed. */
@QuarkusTest
class OnceOnlyTest {
    @TestHTTPResource("/") URL start;

    @Inject SampleData data;
    @Inject AgroalDataSource database;

    private String material;

    @BeforeEach
    void oneMaterial() {
        data.nothing();
        material = new Visitor(start).open("/materials/new").type("/name", "Cord").type("/unit", "m").press("Save").path();
    }

    @Test
    void writesAMovementOnceWhenItsButtonIsPressedTwice() {
        SentForm movement = movement("2 m");
        Response first = movement.send();
        Response second = movement.send();
        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(second.statusCode()).isEqualTo(303);
        assertThat(second.header("Location")).isEqualTo(first.header("Location"));
        assertThat(movements()).isEqualTo(1);
    }

    @Test
    void writesAMovementOnceWhenEightPressesComeAtTheSameMoment() throws Exception {
        SentForm movement = movement("3 m");
        List<Response> answers = atOnce(movement::send, 8);
        assertThat(answers).extracting(Response::statusCode).containsOnly(303);
        assertThat(answers.stream().map(answer -> answer.header("Location")).collect(Collectors.toSet())).hasSize(1);
        assertThat(movements()).isEqualTo(1);
    }

    @Test
    void makesOneClassOneCopyAndOneBatchOfADoublePress() throws Exception {
        data.onlySamples();
        long knotted = data.classTitled("Knotted strand, Saturday");
        assertThat(grownBy("craft_class", SentForm.on("/classes/new?like=" + knotted, "form.sheet"))).isEqualTo(1);
        assertThat(grownBy("project", SentForm.on("/projects/" + number("select min(id) from project"), "form[action$=/copies]"))).isEqualTo(1);
        String batch = "/batches/new?project=" + number("select min(id) from project");
        assertThat(grownBy("kit_batch", SentForm.on(batch, "form.sheet").with("/kits", "6"))).isEqualTo(1);
    }

    @Test
    void takesTheSamePageWithOtherValuesAsAnotherSending() {
        SentForm movement = movement("2 m");
        movement.send();
        movement.with("/amount", "5 m").send();
        assertThat(movements()).isEqualTo(2);
        movement.with("/amount", "5 m").send();
        assertThat(movements()).isEqualTo(2);
        movement.send();
        assertThat(movements()).as("the first values once more, after others were saved").isEqualTo(3);
    }

    @Test
    void keepsNoKeyOfAFormThatWasRefused() throws SQLException {
        SentForm faulty = movement("12 g");
        assertThat(faulty.send().statusCode()).isEqualTo(422);
        assertThat(number("select count(*) from sent_form where key = '" + faulty.key() + "'")).isZero();
        assertThat(faulty.send().statusCode()).isEqualTo(422);
        SentForm gone = new SentForm("/materials/999999/movements", faulty.cookies(), faulty.fields());
        assertThat(gone.send().statusCode()).isEqualTo(404);
        assertThat(gone.send().statusCode()).isEqualTo(404);
    }

    /** Both were written down together; then the program ended before it could say where the form led. */
    @Test
    void asksWhereTheProgramEndedBeforeItCouldAnswer() throws SQLException {
        SentForm movement = movement("4 m");
        movement.send();
        change("update sent_form set answer = null where key = '" + movement.key() + "'");
        Response second = movement.send();
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.asString()).contains("Was this saved?", "4 m");
        assertThat(movements()).isEqualTo(1);
    }

    @Test
    void tellsAPageWhoseAnswerWasLostWhetherItsFormWasSaved() {
        SentForm movement = movement("1 m");
        assertThat(RestAssured.get("/sendings/" + movement.key()).asString()).isEqualTo("not saved");
        movement.send();
        assertThat(RestAssured.get("/sendings/" + movement.key()).asString()).isEqualTo("saved");
    }

    @Test
    void sweepsKeysThatNoOpenPageCanHoldAnyMore() throws SQLException {
        change("insert into sent_form (key, digest, sent_at) values ('old', '', now() - interval '61 days'), ('young', '', now() - interval '59 days')");
        movement("1 m").send();
        assertThat(number("select count(*) from sent_form where key = 'old'")).isZero();
        assertThat(number("select count(*) from sent_form where key = 'young'")).isOne();
    }

    private SentForm movement(String amount) {
        return SentForm.on(material, "form.movement").with("/kind", "received").with("/amount", amount).with("/note", "");
    }

    private long movements() {
        return new Visitor(start).open(material).rows("main").stream().filter(row -> row.matches(".*\\d\\d:\\d\\d.*")).count();
    }

    private long grownBy(String table, SentForm form) throws Exception {
        long before = number("select count(*) from " + table);
        assertThat(atOnce(form::send, 2)).extracting(Response::statusCode).containsOnly(303);
        return number("select count(*) from " + table) - before;
    }

    private static List<Response> atOnce(Callable<Response> sending, int times) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(times);
        try {
            List<Future<Response>> sent = hands.invokeAll(IntStream.range(0, times).mapToObj(i -> sending).toList());
            List<Response> answers = new ArrayList<>();
            for (Future<Response> one : sent) {
                answers.add(one.get());
            }
            return answers;
        } finally {
            hands.shutdown();
        }
    }

    private long number(String sql) throws SQLException {
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
        }
    }

    private void change(String sql) throws SQLException {
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
