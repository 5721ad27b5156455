package benchful.web.door;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import benchful.SampleData;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/** A server behind something that speaks HTTPS and asks for a log-in, as its operator was told to set it up. */
@QuarkusTest
@TestProfile(BehindProxyTest.Shared.class)
class BehindProxyTest {

    public static class Shared implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("benchful.behind-proxy", "true", "benchful.open-network", "true", "benchful.host-names", "plans.example");
        }
    }

    @Inject
    SampleData data;

    @Test
    void leadsOnUnderTheNameAndProtocolThatTheProxyWasAskedBy() {
        data.onlySamples();
        Response form = asked().get("/venues/new");
        Map<String, String> hidden = Jsoup.parse(form.asString()).select("main form[method=post] input[type=hidden][name]").stream()
                .collect(Collectors.toMap(input -> input.attr("name"), input -> input.attr("value"), (one, other) -> one));

        asked().redirects().follow(false).cookies(form.cookies()).header("Origin", "https://plans.example")
                .formParams(hidden).when().post("/samples").then()
                .statusCode(303)
                .header("Location", "https://plans.example/");
    }

    @Test
    void answersToNoStranger() {
        given().header("Host", "stranger.example").when().get("/classes").then().statusCode(421);
        given().header("X-Forwarded-Host", "stranger.example").when().get("/classes").then().statusCode(421);
    }

    @Test
    void showsACodeThatOpensTheDayOnAPhone() throws Exception {
        data.onlySamples();
        String day = "/classes/%d/day".formatted(data.classTitled("Knotted strand, Saturday"));
        asked().get(day).then().statusCode(200).body(containsString("type <span class=\"name\">https://plans.example" + day));
        BufferedImage code = ImageIO.read(new ByteArrayInputStream(asked().get(day + "/code.png").asByteArray()));
        int[] dots = code.getRGB(0, 0, code.getWidth(), code.getHeight(), null, 0, code.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(code.getWidth(), code.getHeight(), dots)));
        assertThat(new QRCodeReader().decode(bitmap).getText()).isEqualTo("https://plans.example" + day);
    }

    private static RequestSpecification asked() {
        return given().header("Host", "127.0.0.1").header("X-Forwarded-Proto", "https").header("X-Forwarded-Host", "plans.example");
    }
}
