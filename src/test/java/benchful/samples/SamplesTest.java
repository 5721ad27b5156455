package benchful.samples;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class SamplesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;

    @BeforeEach
    void nothing() {
        data.nothing();
        tutor = new Visitor(address);
    }

    @Test
    void offersTheSamplesButDoesNotForceThem() {
        assertThat(tutor.open("/").page().select("main").text()).contains("Load the sample classes").contains("Write a project");
        assertThat(tutor.open("/classes").page().text()).contains("None.");
    }

    @Test
    void loadsThemOnceHoweverOftenAsked() {
        tutor.open("/").press("Load the sample classes");
        assertThat(tutor.page().select("h1").text()).isEqualTo("What to do next");
        int classes = tutor.open("/classes").page().select("main table a").size();
        assertThat(classes).isGreaterThanOrEqualTo(7);
        data.onlySamples();
        assertThat(tutor.open("/classes").page().select("main table a")).hasSize(classes);
    }

    @Test
    void removesThemWithOneButton() {
        tutor.open("/").press("Load the sample classes").press("Remove the sample classes");
        assertThat(tutor.page().select("main").text()).contains("Load the sample classes");
    }

    @Test
    void keepsWhatAnOwnClassUses() {
        tutor.open("/").press("Load the sample classes");
        tutor.open("/classes/" + data.classTitled("Knotted strand, Saturday")).follow("Plan the same again").press("Save and show the plan");
        String own = tutor.path();
        tutor.open("/").press("Remove the sample classes");
        assertThat(tutor.page().select("main li").eachText())
                .contains("Knotted strand of amazonite and pearls", "Slipway boatshed studio", "bead silk 0.6 mm");
        assertThat(tutor.open(own).status()).isEqualTo(200);
        assertThat(tutor.open("/classes").page().select("main table a")).hasSize(1);
    }
}
