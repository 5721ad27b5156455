package benchful.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.StoredEntity;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class ClassesPagesTest {
    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private long strand;

    @BeforeEach
    void samples() {
        data.onlySamples();
        strand = data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    @Test
    void plansAClassFromAProject() {
        tutor.open("/classes/new");
        String link = tutor.page().select("a:contains(Knotted strand)").attr("href");
        tutor.open(link).type("/headcount", "7").type("/title", "Tuesday strand").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("h1").text()).isEqualTo("Tuesday strand");
        assertThat(tutor.page().select(".lead").text()).contains("7 students, beginner");
        assertThat(tutor.open("/classes").page().text()).contains("Tuesday strand");
    }

    @Test
    void takesStudentsPastedAsAList() {
        tutor.open("/classes/new");
        tutor.open(tutor.page().select("a:contains(Knotted strand)").attr("href")).type("/headcount", "5").type("/title", "Pasted")
                .type("pasted", "1. Ada Penrose, 45 cm\nBo Lind\t42 CM\tsits by the window\n\n- Cy Marlow\nDee Orr, tall").press("Add these students");
        assertThat(List.of(tutor.field("/students/0/name"), tutor.field("/students/0/size"), tutor.field("/students/1/name"), tutor.field("/students/1/size"),
                tutor.field("/students/1/needs"), tutor.field("/students/2/name"), tutor.field("/students/3/name")))
                .containsExactly("Ada Penrose", "45 cm", "Bo Lind", "42 cm", "sits by the window", "Cy Marlow", "Dee Orr, tall");
        assertThat(tutor.field("pasted")).isEmpty();
        tutor.type("pasted", "Eve Tarn").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(200);
        tutor.follow("Change everything else");
        assertThat(tutor.field("/students/4/name")).isEqualTo("Eve Tarn");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /headcount        | 0      | Enter a number of students from 1 to 200.
            /headcount        | 10000  | Enter a number of students from 1 to 200.
            /headcount        | many   | Enter a number of students from 1 to 200.
            /headcount        | NaN    | Enter a number of students from 1 to 200.
            /headcount        | 5      | 9 students are named, but the class has 5.
            /meetings/0/ends  | 12:00  | must be later than the start
            /meetings/0/date  | 2027-02-31 | 2027-02-31
            /spares           | -1     | Enter how many spare kits, from 0 to 100.
            /breaks/0/lasts   | soon   | Give a time, such as 20 min
            /rest/after       | 55 min | Give a time, such as 20 min
            /currency         | ABC    | “ABC” is no currency.
            /share            | 1.5    | above 0 and up to 1
            /students/1/seat  | 1      | Seat 1 is given twice.
            /students/1/emergency/name  | Ann  | Write the telephone number to call
            /students/6/emergency/phone | none | Write the telephone number to call
            """)
    void refusesWhatCannotBeAndKeepsWhatWasTyped(String field, String typed, String message) {
        tutor.open("/classes/" + strand + "/setup").type(field, typed).press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains(message);
        assertThat(tutor.field(field)).isEqualTo(typed);
        assertThat(tutor.field("/title")).isEqualTo("Knotted strand, Saturday afternoon");
    }

    @Test
    void takesWhatAStudentChoseAndWhatStandsInAndFollowsANewName() {
        String page = "/classes/" + data.classTitled("Plant hangers, Sunday");
        tutor.open(page + "/setup").type("/students/3/choices/cotton cord 3 mm", "cotton cord 3 mm, moss green")
                .type("/instead/0/of", "wooden ring, 55 mm inside").type("/instead/0/use", "no such ring").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("“no such ring” is not among your materials.");
        tutor.type("/instead/0/use", "jump ring 6 mm").press("Save and show the plan");
        assertThat(tutor.page().select(".kits details").eachText()).anyMatch(k -> k.contains("Tobiah Fennimore") && k.contains("cotton cord 3 mm, moss green")
                && k.contains("jump ring 6 mm, instead of wooden ring, 55 mm inside"));

        String material = tutor.open("/materials?find=moss+green").page().select("tbody a").first().attr("href");
        tutor.open(material + "/edit").type("/name", "cotton cord 3 mm, forest").press("Save");
        assertThat(tutor.page().select("main li").eachText()).anyMatch(u -> u.contains("the class Plant hangers, Sunday"));
        assertThat(tutor.open(page + "/setup").field("/students/3/choices/cotton cord 3 mm")).isEqualTo("cotton cord 3 mm, forest");
        assertThat(tutor.press("Save and show the plan").status()).isEqualTo(200);
        assertThat(tutor.page().select("#materials").parents().first().text()).doesNotContain("Not worked out yet");
    }

    @Test
    void showsWhatIsTickedToAGroupAtATime() {
        tutor.open("/classes/" + strand + "/setup").type("/groups", "2").type("/shown_to_groups/2", "show_knot").press("Save and show the plan");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("#plan, table").text()).contains("Shown to each group by itself.");
        assertThat(tutor.open("/classes/" + strand + "/setup").page().select("[name^=/shown_to_groups][checked]").eachAttr("value")).containsExactly("show_knot");
    }

    @Test
    void addsAndRemovesRowsWithoutSaving() {
        tutor.open("/classes/" + strand + "/setup").press("Add a meeting");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("legend:contains(Meeting)")).hasSize(2);
        tutor.press(tutor.page().selectFirst("button[aria-label=Remove meeting 2]"));
        assertThat(tutor.page().select("legend:contains(Meeting)")).hasSize(1);
        tutor.type("/students/0/name", "Ada").press(tutor.page().selectFirst("button[name=remove][value=/students/0]")).press("Undo");
        assertThat(tutor.page().selectFirst("[name=/students/0/name]").val()).isEqualTo("Ada");
        assertThat(tutor.page().select(".removed")).isEmpty();
        assertThat(tutor.open("/classes/" + strand).page().select(".pagehead p").first().text()).matches("Sat 6 Mar 2027, \\S+ to \\S+");
    }

    @Test
    void showsASecondEditorBothVersionsAndLosesNothing() {
        Visitor other = new Visitor(address).open("/classes/" + strand + "/setup");
        tutor.open("/classes/" + strand + "/setup").type("/notes", "Mine first").press("Save and show the plan");
        other.type("/notes", "Theirs second").press("Save and show the plan");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.rows(".summary.stale table")).contains("notes | Mine first | Theirs second");
        assertThat(other.field("/notes")).isEqualTo("Theirs second");
        other.press("Save and show the plan");
        assertThat(other.status()).isEqualTo(200);
        assertThat(other.open("/classes/" + strand + "/setup").field("/notes")).isEqualTo("Theirs second");
    }

    @Test
    void answersNotFoundForWhatIsNotThere() {
        assertThat(tutor.open("/classes/987654").status()).isEqualTo(404);
        assertThat(tutor.open("/classes/987654/setup").status()).isEqualTo(404);
        assertThat(tutor.open("/classes/new?project=987654").status()).isEqualTo(404);
        assertThat(tutor.page().text()).contains("There is nothing at this address");
    }

    @Test
    void plansTheSameAgainForOthersAndStoresNothingBeforeItIsSaved() {
        List<String> before = tutor.open("/classes").rows("table");
        tutor.open("/classes/" + strand).follow("Plan the same again");
        assertThat(tutor.field("/title")).isEqualTo("Knotted strand, Saturday afternoon");
        assertThat(tutor.field("/meetings/0/date")).isEqualTo("2027-03-13");
        assertThat(tutor.field("/headcount")).isEqualTo("9");
        assertThat(Stream.of("42 cm", "40 cm", "45 cm", "50 cm", "Bracelet 19 cm").map(size -> tutor.field("/sizes/" + size))).containsExactly("4", "1", "2", "1", "1");
        assertThat(tutor.page().html()).doesNotContain("Harriet", "Piers Dunmore", "large print; seat", "01632");
        assertThat(tutor.page().select("option[selected]").eachText()).as("what others chose").doesNotContain("sea green");
        assertThat(new Visitor(address).open("/classes").rows("table")).isEqualTo(before);

        tutor.press("Save and show the plan");
        assertThat(tutor.path()).matches("/classes/\\d+").isNotEqualTo("/classes/" + strand);
        assertThat(new Visitor(address).open("/classes").rows("table")).hasSize(before.size() + 1);
        assertThat(tutor.open("/classes/new?like=987654").status()).isEqualTo(404);
    }

    @Test
    void plansAPastClassAgainThreeWeeksAheadOnItsDayOfTheWeek() {
        tutor.open("/classes/" + data.classTitled("Knotted strand, first class")).follow("Plan the same again");
        LocalDate date = LocalDate.parse(tutor.field("/meetings/0/date"));
        assertThat(date).isBetween("2027-03-03", "2027-03-09");
        assertThat(date.getDayOfWeek()).isEqualTo(StoredEntity.byId(CraftClass.class, data.classTitled("Knotted strand, first class")).orElseThrow().startsAt().getDayOfWeek());
    }

    @Test
    void removesAClass() {
        tutor.open("/classes/" + strand).press("Remove this class");
        assertThat(tutor.path()).isEqualTo("/classes");
        assertThat(tutor.open("/classes/" + strand).status()).isEqualTo(404);
    }
}
