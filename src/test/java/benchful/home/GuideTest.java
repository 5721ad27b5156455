package benchful.home;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
class GuideTest {
    @TestHTTPResource("/")
    URL start;

    @Inject
    SampleData data;

    @Test
    void isShownOnEachMainPageOnlyToThoseWhoAskedForItAndGoneAfterOnePress() {
        data.onlySamples();
        Visitor tutor = new Visitor(start);
        assertThat(tutor.open("/").page().select(".guide")).isEmpty();
        assertThat(tutor.open("/studio").press("Show me round").path()).isEqualTo("/");
        for (String page : List.of("/", "/projects", "/projects/new", "/projects/1/edit", "/projects/1", "/classes", "/classes/new?project=1", "/classes/1/setup", "/classes/1",
                "/materials", "/orders", "/orders/new", "/venues", "/hazards")) {
            assertThat(tutor.open(page).page().select("main > .guide p").eachText()).as(page).hasSizeBetween(2, 3).contains("No more of these");
        }
        assertThat(tutor.open("/words").page().select(".guide")).isEmpty();
        assertThat(tutor.open("/classes/1").press("No more of these").path()).isEqualTo("/classes/1");
        assertThat(tutor.page().select(".guide")).isEmpty();
        assertThat(tutor.open("/").page().select(".guide")).isEmpty();
    }

    @Test
    void isOfferedToWhoeverBegins() {
        data.nothing();
        Visitor tutor = new Visitor(start).open("/").press("Show me round");
        assertThat(tutor.page().select(".guide p").eachText()).first().asString().startsWith("This page says what comes next");
    }

    @Test
    void leadsBackToPagesOfOursOnly() {
        for (String page : List.of("//elsewhere.example", "https://elsewhere.example/", "/a?b", "")) {
            Visitor tutor = new Visitor(start).open("/studio").press("Show me round");
            tutor.page().select("input[name=page]").val(page);
            assertThat(tutor.press("No more of these").path()).as(page).isEqualTo("/");
        }
    }
}
