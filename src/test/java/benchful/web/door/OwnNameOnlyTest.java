package benchful.web.door;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class OwnNameOnlyTest {

    @ParameterizedTest
    @ValueSource(strings = {"stranger.example", "127.0.0.1.stranger.example", "192.0.2.7", "localhost.example:8080"})
    void refusesARequestForAnotherName(String host) {
        given().header("Host", host).when().get("/").then()
                .statusCode(421)
                .body(containsString("benchful.host-names"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/health", "/q/openapi", "/css/base.css", "/api/plan"})
    void refusesItAtEveryAddress(String path) {
        given().header("Host", "stranger.example").when().get(path).then().statusCode(421);
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]"})
    void answersToItsOwnNames(String host) {
        given().header("Host", host + ":" + RestAssured.port).when().get("/").then().statusCode(not(421));
    }
}
