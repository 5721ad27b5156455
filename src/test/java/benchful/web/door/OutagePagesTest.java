package benchful.web.door;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the database gives no connection, people are told so in words and keep what they typed. */
@QuarkusTest
class OutagePagesTest {
    @TestHTTPResource("/") URL start;

    @Inject SampleData data;
    @Inject AgroalDataSource database;

    @Test
    void showsAFormAgainWhenEveryConnectionIsTakenAndSavesItAfterwards() throws SQLException {
        data.nothing();
        Visitor tutor = new Visitor(start).open("/materials/new").type("/name", "Patient cord").type("/unit", "m");
        List<Connection> taken = allConnections();
        try {
            tutor.press("Save");
            given().get("/materials").then().statusCode(503).header("Retry-After", "5");
        } finally {
            for (Connection connection : taken) {
                connection.close();
            }
        }
        assertThat(tutor.status()).isEqualTo(503);
        assertThat(tutor.answer().header("Retry-After")).isEqualTo("5");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Not saved yet, and nothing was lost");
        assertThat(tutor.page().select(".lead").text()).contains("busy", "Try again in a moment");
        tutor.press("Send it again");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Patient cord");
    }

    private List<Connection> allConnections() throws SQLException {
        List<Connection> taken = new ArrayList<>();
        int most = database.getConfiguration().connectionPoolConfiguration().maxSize();
        for (int i = 0; i < most; i++) {
            taken.add(database.getConnection());
        }
        return taken;
    }
}
