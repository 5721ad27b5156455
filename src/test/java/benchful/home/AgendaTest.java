package benchful.home;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the first page says is to be done about buying and packing. */
@QuarkusTest
class AgendaTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;

    @BeforeEach
    void samples() {
        data.onlySamples();
        tutor = new Visitor(address);
    }

    @Test
    void followsWhatIsBoughtFromOrderingToReceiving() {
        tutor.open("/");
        assertThat(tasks("Order from ")).isNotEmpty();
        String link = tutor.page().select("a:contains(Order from Ninepin)").attr("href");
        tutor.open(link).press("Write these orders").open("/");
        assertThat(tasks("Order from ")).isEmpty();
        String draft = tutor.page().select("a:matchesOwn(Send order \\d+ to Ninepin Bead Loft)").attr("href");
        tutor.open(draft).press("Mark as sent").open("/");
        assertThat(tutor.page().select("a[href=%s]".formatted(draft)).text()).matches("Receive order \\d+ from Ninepin Bead Loft");
        tutor.open(draft).press("Receive").open("/");
        assertThat(tutor.page().select("a[href=%s]".formatted(draft))).isEmpty();
        assertThat(tasks("Order from Ninepin")).isEmpty();
    }

    @Test
    void saysHowFarPackingHasCome() {
        String page = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/packing";
        tutor.open(page).press(tutor.page().selectFirst("section button[name=whole]")).open("/");
        assertThat(tutor.page().select("a[href=%s]".formatted(page)).text()).matches("Pack for “Knotted strand, Saturday afternoon”: \\d+ of \\d+ things are packed");
    }

    @Test
    void asksToReleaseWhatAPastClassKeepsFromOthers() {
        String shelf = "/classes/" + data.classTitled("Knotted strand, first class") + "/reservation";
        tutor.open(shelf).press("Reserve what it needs").open("/");
        assertThat(tutor.page().select("a[href=%s]".formatted(shelf)).text()).isEqualTo("Release what “Knotted strand, first class” did not use");
        tutor.open(shelf).press("Release it").open("/");
        assertThat(tutor.page().select("a[href=%s]".formatted(shelf))).isEmpty();
    }

    private List<String> tasks(String start) {
        return tutor.page().select("main table a").eachText().stream().filter(t -> t.startsWith(start)).toList();
    }
}
