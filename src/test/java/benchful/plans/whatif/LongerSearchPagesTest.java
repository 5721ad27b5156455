package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.classes.ClassFile;
import benchful.core.lesson.order.Firings;
import benchful.plans.ClassFileReader;
import benchful.plans.FiredClass;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The pages of a longer search, on a class that the usual one leaves a minute too long. */
@QuarkusTest
class LongerSearchPagesTest {
    private static final int PATIENCE_SECONDS = 120;

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Inject
    ClassFileReader files;

    private Visitor tutor;
    private String page;

    @BeforeEach
    void firings() {
        data.onlySamples();
        tutor = new Visitor(address);
        ClassFile file = FiredClass.of(Firings.request(3, 20).build());
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", files.yaml(file).getBytes(StandardCharsets.UTF_8)).press("Import");
        page = tutor.path();
    }

    private void wait(Supplier<Boolean> until) throws InterruptedException {
        for (int i = 0; i < PATIENCE_SECONDS && !until.get(); i++) {
            Thread.sleep(1000);
            tutor.open(page + "/search");
        }
        assertThat(until.get()).as(tutor.page().text()).isTrue();
    }

    @Test
    void findsABetterOrderThatIsTakenByOneButtonAndTakenBackByAnother() throws InterruptedException {
        assertThat(tutor.page().select("#fit-answer").text()).contains("another might end up to", "Search longer");
        String before = tutor.page().select("#fit-answer .lead").text();
        tutor.follow("Search longer");
        assertThat(tutor.path()).isEqualTo(page + "/search");
        wait(() -> tutor.page().select("[role=status]").text().contains("expected to end at 19:11;"));
        assertThat(tutor.page().select("[data-awaited]").text()).contains("also while this page is closed");
        tutor.press("That is enough: show what was found");
        wait(() -> tutor.page().select("[data-awaited]").isEmpty());
        assertThat(tutor.page().select(".panel").text()).contains("An order was found that ends 1 min sooner: 19:11 instead of 19:12", "Another might end up to");
        tutor.press("Take this order");
        assertThat(tutor.path()).isEqualTo(page);
        assertThat(tutor.page().select("#fit-answer .lead").text()).isNotEqualTo(before).contains("19:11");
        assertThat(tutor.open(page + "/setup").field("/found_order")).contains("load0");
        tutor.open(page + "/search");
        assertThat(tutor.page().select(".panel").text()).as("there is nothing more to take").startsWith("Nothing better was found.");
    }

    @Test
    void isNotOfferedWhereTheOrderIsProven() {
        tutor.open("/classes/" + data.classTitled("Knotted strand, Saturday"));
        assertThat(tutor.page().select("#fit-answer").text()).contains("No order of these steps ends sooner").doesNotContain("Search longer");
    }

    @Test
    void saysWhatToMendFirstWhereTheClassCannotBePlanned() {
        tutor.open(page + "/setup").type("/tools/a", "2").press("Save and show the plan");
        tutor.open(page + "/search");
        assertThat(tutor.page().text()).contains("contradict each other. See what to mend first.");
    }
}
