package benchful.venues;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URL;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

@QuarkusTest
class VenuesPagesTest {
    @TestHTTPResource("/") URL start;

    @Test
    void writesDownARoomAndKeepsItWhole() {
        Visitor tutor = new Visitor(start).open("/venues/new")
                .type("/name", "Slip loft").type("/seats", "9").type("/sockets", "6").type("/ventilation", "windows").type("/water", "true")
                .type("/rules/0", "No flames").press("Save");
        assertThat(tutor.page().select(".facts dd").eachText()).containsExactly("9", "6", "windows that open", "yes", "no");
        assertThat(tutor.page().select("main li").eachText()).containsExactly("No flames");

        tutor.open(tutor.path() + "/edit").press("Save");
        assertThat(tutor.page().select(".facts dd").eachText()).containsExactly("9", "6", "windows that open", "yes", "no");
    }

    @Test
    void carriesTheHazardsOfItsRoomAndWhatTheEmergencyCardSays() {
        Visitor tutor = new Visitor(start).open("/venues/new").type("/name", "Sail loft").type("/hazards/0", "slip-trips").type("/emergency/call", "999").press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("“slip-trips” is not in the hazard library. Did you mean “slips-trips”?");
        tutor.type("/hazards/0", "slips-trips").press("Save");
        assertThat(tutor.page().select("a.tag").eachText()).containsExactly("Slips and trips");
        assertThat(tutor.page().select("main").text()).contains("Emergency number 999");
    }

    @Test
    void takesToolsByNameEvenWithStrokesInIt() {
        assertThat(ToolRows.asFields(form("1/8 in drill ~ bit", "", "pliers", "6")))
                .containsKeys("/tools/1~18 in drill ~0 bit", "/tools/pliers")
                .containsEntry("/tools/1~18 in drill ~0 bit", List.of("1"))
                .containsEntry("/water", List.of("false"));
    }

    @Test
    void keepsTypedValuesWhenInvalid() {
        Visitor tutor = new Visitor(start).open("/venues/new").type("/name", "").type("/seats", "9000").press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/seats")).isEqualTo("9000");
        assertThat(tutor.faults()).contains("Give the venue a name.", "Give the places at the bench, from 1 to 500.");
    }

    @Test
    void showsASignForACharacterThatNoPageCanHold() {
        Visitor tutor = new Visitor(start).open("/venues/new").type("/name", "Kiln\0yard").type("tool-name", "rib\0bon").press("Save");
        assertThat(tutor.page().select("h1, main").text()).contains("Kiln\uFFFDyard").doesNotContain("\0");
    }

    @Test
    void refusesATakenNameAndRemovesWhatNothingUses() {
        Visitor tutor = new Visitor(start).open("/venues/new").type("/name", "Twin loft").press("Save");
        String page = tutor.path();
        tutor.open("/venues/new").type("/name", "TWIN LOFT").press("Save");
        assertThat(tutor.faults()).contains("There is a venue called “Twin loft” already. Give this one another name.");
        tutor.open(page).press("Remove this venue");
        assertThat(tutor.path()).isEqualTo("/venues");
        assertThat(tutor.open("/venues?find=twin").page().select("main a").eachText()).doesNotContain("Twin loft");
    }

    @Test
    void listsToolsByNameWithTheRoomsAndProjectsThatNameThem() {
        Visitor tutor = new Visitor(start).open("/venues/new").type("/name", "Tool loft")
                .type("tool-name", "bench Peg of the loft").type("tool-count", "4").press("Save");
        tutor.open("/venues/tools");
        Element row = tutor.page().select("tr").stream().filter(r -> r.text().startsWith("bench Peg of the loft")).findFirst().orElseThrow();
        assertThat(row.select("a").eachText()).containsExactly("Tool loft (4)");
        assertThat(tutor.open("/venues/new").page().select("#known-tools option").eachAttr("value")).contains("bench Peg of the loft");
        assertThat(tutor.open("/projects/new").page().select("#known-tools option").eachAttr("value")).contains("bench Peg of the loft");
    }

    private static MultivaluedMap<String, String> form(String... namesAndCounts) {
        var form = new MultivaluedHashMap<String, String>();
        for (int i = 0; i < namesAndCounts.length; i += 2) {
            form.add("tool-name", namesAndCounts[i]);
            form.add("tool-count", namesAndCounts[i + 1]);
        }
        return form;
    }
}
