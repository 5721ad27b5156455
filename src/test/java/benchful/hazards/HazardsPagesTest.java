package benchful.hazards;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class HazardsPagesTest {
    @TestHTTPResource("/") URL start;

    @Inject HazardLibrary library;

    private Visitor tutor;

    @BeforeEach
    void opensABrowser() {
        tutor = new Visitor(start);
    }

    @Test
    void listsTheLibraryAndShowsAnEntryWhole() {
        assertThat(tutor.open("/hazards").rows("main")).anyMatch(r -> r.startsWith("Solvent vapour and solvent-based glue | "));
        tutor.open("/hazards/epoxy");
        assertThat(tutor.page().select("main").text())
                .contains("H317 May cause an allergic skin reaction", "M009 Wear protective gloves", "If it happens", "Sources");
        assertThat(tutor.open("/hazards/signs/W021.svg").answer().contentType()).startsWith("image/svg+xml");
        assertThat(tutor.open("/hazards/signs/W999.svg").status()).isEqualTo(404);
    }

    @Test
    void keepsTheTutorsTextUntilSheGoesBackToTheLibrarys() {
        String harm = library.find("magnets").orElseThrow().harm();
        tutor.open("/hazards/magnets/edit").type("/harm", "They pinch.").type("lines/cautions", "Keep apart.\nCount them.").press("Save");
        assertThat(tutor.page().select("h1 .tag").text()).isEqualTo("your text");
        assertThat(library.find("magnets").orElseThrow().cautions()).containsExactly("Keep apart.", "Count them.");

        tutor.press("Back to the library’s text");
        assertThat(tutor.path()).isEqualTo("/hazards/magnets");
        assertThat(library.find("magnets").orElseThrow().harm()).isEqualTo(harm);
    }

    @Test
    void showsBothVersionsEvenWhereBothBeganWithTheLibrarysText() {
        Visitor other = new Visitor(start).open("/hazards/machine-noise/edit").type("/harm", "Theirs.");
        tutor.open("/hazards/machine-noise/edit");
        other.press("Save");
        tutor.type("/harm", "Mine.").press("Save");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.rows(".summary")).contains("harm | Theirs. | Mine.");
        tutor.press("Save");
        assertThat(library.find("machine-noise").orElseThrow().harm()).isEqualTo("Mine.");
        tutor.press("Back to the library’s text");
    }

    @Test
    void addsAnEntryThatMaterialsCanCarryAndKeepsItWhileTheyDo() {
        tutor.open("/hazards/new").type("/name", "Hot glass").type("/id", "hot-glass").type("/harm", "Burns.")
                .type("lines/cautions", "Never over an open flame.").type("lines/first_response", "Cool with water for 20 minutes.")
                .type("lines/ghs", "H315 Causes skin irritation").press("Save");
        assertThat(library.find(List.of("hot-glass", "no-such-hazard", "epoxy"))).extracting(HazardSpec::id).containsExactly("hot-glass", "epoxy");
        tutor.open("/materials/new").type("/name", "Hazard glass").type("/unit", "g").type("/hazards/0", "hot-glass").press("Save");
        tutor.open("/hazards/hot-glass").press("Remove this hazard");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().select("main li").eachText()).containsExactly("the material Hazard glass");

        tutor.open(tutor.page().selectFirst("main li a").attr("href")).press("Remove this material");
        tutor.open("/hazards/hot-glass").press("Remove this hazard");
        assertThat(tutor.path()).isEqualTo("/hazards");
        assertThat(library.find("hot-glass")).isEmpty();
    }

    @Test
    void keepsTypedValuesWhenInvalidAndSaysWhichLine() {
        tutor.open("/hazards/new").type("/name", "Wax").type("/id", "Hot Wax").type("/minimum_age", "1")
                .type("lines/ghs", "H315 Causes skin irritation\nirritating").press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("lines/ghs")).isEqualTo("H315 Causes skin irritation\nirritating");
        assertThat(tutor.page().select(".field .fault").eachText()).contains("Line 2: Begin with the code in capitals, such as H317 or W021.",
                "Write at least one caution.", "Give the youngest age in whole years, from 3 to 99.");
    }

    @Test
    void refusesAShortNameThatIsTakenAndAnUnknownHazardOnAMaterial() {
        tutor.open("/hazards/new").type("/name", "Epoxy again").type("/id", "epoxy").type("/harm", "x")
                .type("lines/cautions", "x").type("lines/first_response", "x").press("Save");
        assertThat(tutor.faults()).contains("There is a hazard with this short name already. Give this one another.");
        tutor.open("/materials/new").type("/name", "Unknown hazard").type("/hazards/0", "no-such-thing").press("Save");
        assertThat(tutor.faults()).contains("“no-such-thing” is not in the hazard library. Choose one of its short names, or add this one there first.");
    }
}
