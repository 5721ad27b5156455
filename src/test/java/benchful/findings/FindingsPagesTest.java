package benchful.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.SampleData;
import benchful.web.Crowd;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A sewing class for eight that is planned in 49 minutes of sewing and takes 65 to 68, three times; the times are of a real tutor's. */
@QuarkusTest
class FindingsPagesTest {
    private static final String CLASS = """
            project:
              name: Zip pouch
              craft: sewing
              level: improver
              sizes: [{name: one}]
              steps:
                - {id: welcome, title: Welcome, kind: together, lasts: 10 min}
                - {id: fold, title: Fold the lining, kind: make, student: {quick: 10 min, usual: 12 min, slow: 17 min}}
                - {id: sew, title: Sew the sides, kind: make, student: {quick: 38 min, usual: 42 min, slow: 54 min}}
                - {id: tidy, title: Tidy up, kind: together, lasts: 10 min}
            class:
              title: Pouches
              headcount: 8
              level: improver
              meetings: [{date: 2027-04-10, starts: "14:00", ends: "16:30"}]
            """;

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String first;

    @BeforeEach
    void pouch() {
        data.nothing();
        tutor = new Visitor(address);
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", CLASS.getBytes(StandardCharsets.UTF_8)).press("Import");
        first = tutor.path();
    }

    private String another() {
        return tutor.open(first).follow("Plan the same again").press("Save and show the plan").path();
    }

    private void reviewed(String craftClass, int fold, int sew) {
        tutor.open(craftClass + "/review").type("/steps/welcome/took", "10 min").type("/steps/fold/took", fold + " min").type("/steps/sew/took", sew + " min")
                .type("/steps/tidy/took", "10 min").press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
    }

    private String threeReviewed() {
        List<String> classes = new ArrayList<>(List.of(first, another(), another()));
        reviewed(classes.get(0), 23, 65);
        reviewed(classes.get(1), 22, 68);
        reviewed(classes.get(2), 22, 68);
        return another();
    }

    private Element button(String step, String words) {
        return tutor.page().selectFirst("section:has(#step-%s) button:contains(%s)".formatted(step, words));
    }

    private LocalTime end() {
        Matcher end = Pattern.compile("end by (\\d\\d:\\d\\d)|nine in ten by (\\d\\d:\\d\\d)").matcher(tutor.page().select("#fit-answer").text());
        assertThat(end.find()).as(tutor.page().select("#fit-answer").text()).isTrue();
        return LocalTime.parse(end.group(1) == null ? end.group(2) : end.group(1));
    }

    @Test
    void movesTheNextPlansEndToWhatHappenedByOnePress() {
        String next = threeReviewed();
        assertThat(tutor.open(first + "/review").rows("table.typed")).anyMatch(r -> r.startsWith("Sew the sides") && r.matches(".*\\| (48|49|50) min \\|.*"));
        tutor.open(next);
        LocalTime before = end();
        String showed = tutor.page().select("#showed .lead").text();
        tutor.press("Take all into the project");
        assertThat(tutor.path()).isEqualTo(next);
        LocalTime after = end();
        assertThat(showed).isEqualTo("With what 3 classes showed it ends %s, not %s.".formatted(after, before));
        double happened = 10 + (23 + 22 + 22) / 3.0 + (65 + 68 + 68) / 3.0 + 10;
        assertThat(Duration.between(LocalTime.of(14, 0), after).toMinutes() - happened).as("ends %s instead of %s; it took %s min", after, before, happened).isCloseTo(0, within(5.0));
        assertThat(tutor.page().select("#showed")).isEmpty();
        assertThat(tutor.page().select("#plan ~ p").text()).contains("the minutes of Fold the lining, Sew the sides come from earlier classes");
    }

    /** Six of eight had finished well before the last two: the class tells more, and of those who were slow less. */
    @Test
    void learnsFromWhoHadFinishedWhen() {
        reviewed(first, 23, 65);
        String before = step("sew");
        List<String> taps = List.of(counted("one", "15:01", 1), counted("two", "15:12", 4), counted("three", "15:20", 6));
        tapped(first, taps);
        String after = step("sew");
        assertThat(before).startsWith("From 1 class: one student usually needs");
        assertThat(after).startsWith("From 1 class, in 1 of them with who had finished when: one student usually needs");
        assertThat(usual(after)).isLessThan(usual(before));
    }

    private static String counted(String id, String at, int finished) {
        return tap(id, at, "count", "sew", finished);
    }

    private static String tap(String id, String at, String kind, String step, int number) {
        return "{\"id\":\"%s\",\"at\":\"2027-04-10T%s:00.000\",\"kind\":\"%s\",\"step\":\"%s\",\"number\":%d,\"text\":\"\"}".formatted(id, at, kind, step, number);
    }

    private void tapped(String craftClass, List<String> taps) {
        FormElement form = (FormElement) tutor.open(craftClass + "/day").page().selectFirst("form[data-day]");
        form.addElement(form.appendElement("input").attr("type", "hidden").attr("name", "taps").attr("value", "[" + String.join(",", taps) + "]"));
        tutor.press(form.selectFirst("button"));
        assertThat(tutor.status()).isEqualTo(200);
    }

    /** Eight students sew for an hour and put up a hand every two minutes, each of them some four times; nothing was typed. */
    @Test
    void learnsHowOftenStudentsAskAndThatWaitingForHelpIsNoSewing() {
        reviewed(first, 23, 65);
        int sewing = usual(step("sew"));
        assertThat(tutor.page().select("#help-sew")).isEmpty();
        List<String> taps = new ArrayList<>(List.of(tap("fold", "14:33", "finish", "fold", 0), tap("sew", "15:38", "finish", "sew", 0)));
        for (int i = 0; i < 30; i++) {
            String minute = "%d:%02d".formatted(14 + (34 + 2 * i) / 60, (34 + 2 * i) % 60);
            String next = "%d:%02d".formatted(14 + (35 + 2 * i) / 60, (35 + 2 * i) % 60);
            taps.addAll(List.of(tap("up" + i, minute, "help", "-", 1), tap("down" + i, next, "help", "-", 0)));
        }
        tapped(first, taps);
        assertThat(usual(step("sew"))).as("waiting for help is taken off").isLessThan(sewing);
        assertThat(help()).contains("From 1 class in which hands were counted, 30 hands in all: one student is likely to ask 1.6 times an hour, with nine chances in ten 1.2 to 2.1.",
                "In the project: no calls for help; proposed: 1.5 calls an hour of 2 min.");

        tutor.press(tutor.page().selectFirst("section:has(#help-sew) button:contains(Keep as it is)"));
        assertThat(tutor.page().select("section:has(#help-sew) button")).isEmpty();
        assertThat(usual(step("sew"))).as("what is kept is planned with, and learned with").isEqualTo(sewing);

        tapped(first, List.of(tap("more", "15:36", "help", "-", 1)));
        tutor.open("/projects/1/findings");
        tutor.press(tutor.page().selectFirst("section:has(#help-sew) button:contains(Take)"));
        assertThat(tutor.page().select("main ul li").text()).contains("Help with Sew the sides, taken: 1.5 calls an hour of 2 min instead of no calls for help (from 1 class)");
        assertThat(tutor.open("/projects/1/edit").field("/steps/2/help/calls")).isEqualTo("1.5");
        assertThat(tutor.field("/steps/2/help/lasts")).isEqualTo("2 min");
        help();
        assertThat(tutor.page().select("section:has(#help-sew) button")).isEmpty();
        assertThat(usual(step("sew"))).isLessThan(sewing);
    }

    /** The break of ten minutes is begun at three, and over at fourteen past. */
    @Test
    void learnsHowLongBreaksTakeAndAsksTheNextClass() {
        String withBreak = tutor.open(first).follow("Plan the same again").type("/breaks/0/at", "15:00").type("/breaks/0/lasts", "10 min").press("Save and show the plan").path();
        tapped(withBreak, List.of(tap("w", "14:00", "start", "welcome", 0), tap("b", "15:00", "start", "break-1", 0), tap("e", "15:14", "finish", "break-1", 0)));
        assertThat(tutor.open(withBreak + "/review").field("/breaks/break-1/began")).startsWith("15:00");
        assertThat(tutor.field("/breaks/break-1/took")).isEqualTo("14 min");
        tutor.type("/steps/fold/ended", "14:33").type("/steps/sew/ended", "15:53").press("Save the review");
        assertThat(tutor.rows("table.typed")).as("the break is no sewing").anyMatch(r -> r.startsWith("Sew the sides") && r.contains("| 1 h 6 min |"));
        assertThat(tutor.open("/projects/1/findings").page().select("section:has(#break-1)").text()).contains("Breaks of 10 min From 1 class in which",
                "usually takes 9 min to 18 min.", "Planned: 10 min; proposed: 13 min.", "Each class plans its own breaks");
        assertThat(tutor.page().select("section:has(#break-1) button").eachText()).containsExactly("Keep as it is");
        while (!tutor.page().select("section:has(h2[id^=step]) button:contains(Keep)").isEmpty()) {
            tutor.press(tutor.page().selectFirst("section:has(h2[id^=step]) button:contains(Keep)"));
        }

        String next = tutor.open(withBreak).follow("Plan the same again").press("Save and show the plan").path();
        String kept = tutor.open(withBreak).follow("Plan the same again").press("Save and show the plan").path();
        assertThat(tutor.open(next).page().select("#showed li").eachText()).containsExactly("Breaks of 10 min: 13 min instead of 10 min: the class ends 3 min later");
        LocalTime before = end();
        tutor.press("Take all into this class");
        assertThat(tutor.path()).isEqualTo(next);
        assertThat(end()).isEqualTo(before.plusMinutes(3));
        assertThat(tutor.page().select("#showed")).isEmpty();
        assertThat(tutor.open(next + "/setup").field("/breaks/0/lasts")).isEqualTo("13 min");
        assertThat(tutor.open(kept + "/setup").field("/breaks/0/lasts")).isEqualTo("10 min");

        tutor.open(kept).follow("One by one, and why");
        assertThat(tutor.page().select("section:has(#break-1) button").eachText()).containsExactly("Take", "Keep as it is");
        tutor.press(tutor.page().selectFirst("section:has(#break-1) button:contains(Keep)"));
        assertThat(tutor.open(kept).page().select("#showed")).isEmpty();
        assertThat(tutor.open(withBreak + "/review").type("/notes", "Cake").press("Save the review").open(kept).page().select("#showed")).as("notes are no new data").isEmpty();
        tutor.open(kept + "/review").type("/breaks/break-1/took", "14 min").press("Save the review");
        String last = tutor.open(withBreak).follow("Plan the same again").press("Save and show the plan").path();
        assertThat(tutor.page().select("#showed li").eachText()).contains("Breaks of 10 min: 13 min instead of 10 min: the class ends 3 min later");
        assertThat(tutor.open("/projects/1/findings").page().select("main ul li").eachText()).anyMatch(line -> line.contains("Breaks of 10 min, kept: 10 min, not 13 min (from 1 class)"))
                .anyMatch(line -> line.contains("Breaks of 10 min, taken: 13 min instead of 10 min (from 1 class)"));
        assertThat(tutor.open(last + "/setup").field("/breaks/0/lasts")).isEqualTo("10 min");
    }

    /** Eight students at four machines, and snips that nobody counted. */
    @Test
    void asksForOneMoreOfAToolThatStudentsWaitedFor() {
        String tote = CLASS.replace("name: Zip pouch", "name: Tote\n  tools: [{name: sewing machine}, {name: thread snips}, {name: finger guard, personal: true}, {name: ruler, owned: 1}]")
                .replace("{id: sew, title: Sew the sides, kind: make,", "{id: sew, title: Sew the sides, kind: make, tools: [{tool: sewing machine, each: 1}, {tool: thread snips, each: 1}],")
                .replace("headcount: 8", "headcount: 8\n  tools: {sewing machine: 4}");
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", tote.getBytes(StandardCharsets.UTF_8)).press("Import");
        String four = tutor.path();
        tutor.open(four + "/review");
        assertThat(tutor.page().select("fieldset:has(legend:contains(waited for)) label").eachText()).containsExactly("sewing machine", "thread snips", "ruler");
        tutor.type("/waited/0", "sewing machine").type("/waited/1", "thread snips").press("Save the review");
        assertThat(tutor.page().select("fieldset:has(legend:contains(waited for)) input[checked]").eachAttr("value")).containsExactly("sewing machine", "thread snips");
        tutor.open("/projects/2/findings");
        assertThat(tutor.page().select("section:has(#tool-1)").text()).contains("Students waited for it in 1 class, with as many as 4 there for 8 students.", "Proposed: one more for as many students.");
        assertThat(tutor.page().select("section:has(#tool-2)").text()).contains("Nobody wrote down how many there were");
        assertThat(tutor.page().select("section:has(h2[id^=tool]) button").eachText()).containsExactly("Keep as it is");

        String next = tutor.open(four).follow("Plan the same again").type("/headcount", "10").press("Save and show the plan").path();
        LocalTime before = end();
        String proposed = tutor.page().select("#showed li").text();
        tutor.press("Take all into this class");
        assertThat(proposed).isEqualTo("sewing machine: 6 there instead of 4 there: the class ends %d min sooner".formatted(Duration.between(end(), before).toMinutes()));
        assertThat(tutor.open(next + "/setup").field("/tools/sewing machine")).isEqualTo("6");
        assertThat(tutor.open(next).page().select("#showed")).isEmpty();
        String ten = tutor.open(next).follow("Plan the same again").type("/tools/sewing machine", "10").press("Save and show the plan").path();
        assertThat(tutor.open(ten + "/review").page().select("fieldset:has(legend:contains(waited for)) label").eachText()).as("nobody waits for ten").containsExactly("thread snips", "ruler");
        assertThat(tutor.open("/projects/2/findings").page().select("main ul li").text()).contains("sewing machine, taken: 6 there instead of 4 there (from 1 class)");

        tutor.press(tutor.page().selectFirst("section:has(#tool-1) button:contains(Keep)"));
        tutor.open(four).follow("Plan the same again").press("Save and show the plan");
        assertThat(tutor.page().select("#showed")).isEmpty();
        tutor.open(next + "/review").type("/waited/0", "sewing machine").press("Save the review");
        tutor.open(next).follow("Plan the same again").press("Save and show the plan");
        assertThat(tutor.page().select("#showed li").text()).startsWith("sewing machine: 7 there instead of 6 there: ");
    }

    private String help() {
        return tutor.open("/projects/1/findings").page().select("section:has(#help-sew)").text();
    }

    private String step(String step) {
        return tutor.open("/projects/1/findings").page().select("section:has(#step-%s) > p:contains(From)".formatted(step)).text();
    }

    private static int usual(String words) {
        Matcher needs = Pattern.compile("usually needs (\\d+) min").matcher(words);
        assertThat(needs.find()).as(words).isTrue();
        return Integer.parseInt(needs.group(1));
    }

    /** Improvers take what the steps say; beginners of whom half as much again is believed take two and a half times as long. */
    @Test
    void learnsHowLongALevelTakesWhereClassesOfTwoLevelsDidTheSame() {
        reviewed(first, 16, 49);
        String beginners = tutor.open(first).follow("Plan the same again").type("/level", "beginner").press("Save and show the plan").path();
        assertThat(tutor.open("/projects/1/findings").page().select("#level-beginner")).isEmpty();
        reviewed(beginners, 40, 122);

        Element found = tutor.open("/projects/1/findings").page().selectFirst("section:has(#level-beginner)");
        assertThat(found.text()).startsWith("Pace of beginners From 1 class of this level beside those of the level whose times the steps give (improver)")
                .contains("In the project: 1.5 times as long; proposed: ");
        assertThat(usual(step("sew"))).as("what the level accounts for is no step's").isLessThan(50);
        tutor.open("/projects/1/findings").press(tutor.page().selectFirst("section:has(#level-beginner) button:contains(Take)"));
        assertThat(tutor.page().select("main ul li").text()).contains("Pace of beginners, taken: ", " instead of 1.5 times as long");
        assertThat(new BigDecimal(tutor.open("/projects/1/edit").field("/paces/beginner"))).isBetween(new BigDecimal("1.9"), new BigDecimal("2.4"));
        assertThat(tutor.open("/projects/1/findings").page().select("section:has(#level-beginner) button")).isEmpty();
    }

    @Test
    void refusesAPaceOfThoseWhoseTimesTheStepsGive() {
        tutor.open("/projects/1/edit").type("/paces/improver", "1.2").type("/paces/beginner", "1.8").press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().text()).contains("The steps’ times are those of this level already. Leave it empty.");
        tutor.type("/paces/improver", "").press("Save the project");
        assertThat(tutor.status()).isEqualTo(200);
    }

    @Test
    void changesThePlanOfTheReviewedClassesByNothing() {
        threeReviewed();
        String before = tutor.open(first + "/review").page().select("table.typed").text();
        tutor.open("/projects/1/findings").press("Take all into the project");
        assertThat(tutor.open(first + "/review").page().select("table.typed").text()).isEqualTo(before);
        assertThat(tutor.open("/projects/1/findings").page().select("p.lead").text()).contains("are those that classes showed");
    }

    @Test
    void keepsTheProjectAsItWasAndPutsItBack() {
        threeReviewed();
        tutor.open("/projects/1/findings").press("Take all into the project");
        assertThat(tutor.open("/projects/1/edit").field("/steps/2/student/usual")).isNotEqualTo("42 min");
        tutor.open("/projects/1").press("Put this back");
        assertThat(tutor.open("/projects/1/edit").field("/steps/2/student/usual")).isEqualTo("42 min");
        assertThat(tutor.open("/projects/1/findings").page().select("button").eachText()).contains("Take all into the project");
    }

    @Test
    void takesOneStepAndLeavesTheOthers() {
        threeReviewed();
        tutor.open("/projects/1/findings");
        tutor.press(button("sew", "Take"));
        assertThat(tutor.page().select("main ul li").text()).contains("Sew the sides, taken: ");
        assertThat(tutor.open("/projects/1/edit").field("/steps/1/student/usual")).isEqualTo("12 min");
        assertThat(tutor.field("/steps/2/student/usual")).isNotEqualTo("42 min");
    }

    @Test
    void proposesNothingAgainThatWasRefusedBeforeThereIsNewData() {
        String next = threeReviewed();
        tutor.open("/projects/1/findings");
        tutor.press(button("sew", "Keep as it is"));
        tutor.press(button("fold", "Keep as it is"));
        assertThat(tutor.page().select("button").eachText()).doesNotContain("Take all into the project", "Take");
        assertThat(tutor.open(next).page().select("#showed")).isEmpty();
        assertThat(tutor.open("/projects/1/edit").field("/steps/2/student/usual")).isEqualTo("42 min");
        tutor.open(first + "/review").type("/steps/sew/note", "Two asked for help").type("/why/0", "late start").type("/notes", "Cake").press("Save the review");
        assertThat(tutor.open(next).page().select("#showed")).as("words are no new data").isEmpty();

        reviewed(next, 22, 67);
        assertThat(tutor.open("/projects/1/findings").page().select("button").eachText()).contains("Take all into the project");
    }

    @Test
    void proposesNoMoreOnceItIsTakenThoughEachClassWasCounted() {
        threeReviewed();
        tutor.open("/projects/1/findings").press("Take all into the project");
        String taken = tutor.open("/projects/1/edit").field("/steps/2/student/usual");
        String next = another();
        reviewed(next, 22, 67);
        tutor.open("/projects/1/findings");
        assertThat(tutor.page().select("button").eachText()).doesNotContain("Take all into the project");
        assertThat(tutor.page().select("#step-sew").parents().select(".panel").text()).contains("From 4 classes");
        assertThat(taken).isEqualTo(tutor.open("/projects/1/edit").field("/steps/2/student/usual"));
    }

    @Test
    void takesNothingOfWhatIsNotAsItWasShown() {
        threeReviewed();
        Visitor desk = new Visitor(address).open("/projects/1/findings");
        reviewed(first, 23, 50);
        desk.press("Take all into the project");
        assertThat(desk.status()).isEqualTo(409);
        assertThat(desk.page().select("[role=alert]").text()).contains("Nothing was changed");
        assertThat(tutor.open("/projects/1/edit").field("/steps/2/student/usual")).isEqualTo("42 min");
        desk.press("Take all into the project");
        assertThat(desk.status()).isEqualTo(200);
    }

    @Test
    void takesOnceThoughManyPress() throws Exception {
        threeReviewed();
        assertThat(Crowd.together(3, i -> new Visitor(address).open("/projects/1/findings"), v -> v.press("Take all into the project")))
                .extracting(Visitor::status).containsExactlyInAnyOrder(200, 409, 409);
        assertThat(tutor.open("/projects/1/findings").page().select("main li:contains(Sew the sides, taken)")).hasSize(1);
    }

    @Test
    void countsWithTheStudentsWhoCame() {
        reviewed(first, 16, 49);
        String all = middle();
        tutor.open(first + "/review").type("/students", "3").press("Save the review");
        assertThat(Integer.parseInt(middle())).as("three are quicker than eight, so the same minutes say that one needs more").isGreaterThan(Integer.parseInt(all));
    }

    private String middle() {
        Matcher middle = Pattern.compile("one student usually needs (\\d+) min").matcher(tutor.open("/projects/1/findings").page().select("section:has(#step-sew)").text());
        assertThat(middle.find()).isTrue();
        return middle.group(1);
    }

    @Test
    void showsNotesOfEarlierClassesOnThePlanTheChecklistAndTheProject() throws IOException {
        tutor.open(first + "/review").type("/steps/sew/note", "Bring a second weight").type("/notes", "Order more zips").press("Save the review");
        String next = another();
        assertThat(tutor.open(next).page().select("#fit ~ .panel, section:has(#fit) .panel").text()).contains("Sat 10 Apr 2027: Order more zips").contains("Sew the sides: Bring a second weight");
        assertThat(tutor.open("/projects/1").page().text()).contains("Sew the sides: Bring a second weight");
        try (PDDocument sheet = Loader.loadPDF(tutor.open(next + "/documents/checklist.pdf").bytes())) {
            assertThat(new PDFTextStripper().getText(sheet).replaceAll("\\s+", " ")).contains("From earlier classes", "Bring a second weight");
        }
        assertThat(tutor.open(first).page().select("section:has(#fit)").text()).as("its own notes are on its review").doesNotContain("Bring a second weight");
    }

    @Test
    void showsTheOthersWhereOneReviewCannotBeRead() {
        threeReviewed();
        data.sql("update review set sheet = '{\"steps\": 3}' where id = 1");
        tutor.open("/projects/1/findings");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().text()).contains("From 2 reviewed classes").contains("Pouches");
        assertThat(tutor.open("/projects/1").status()).isEqualTo(200);
    }

    @Test
    void saysWhatIsMissingWhereNothingWasReviewed() {
        assertThat(tutor.open("/projects/1/findings").page().select("p.lead").text()).contains("No class of this project has shown its minutes yet");
        assertThat(tutor.open(first).page().select("#showed")).isEmpty();
        assertThat(tutor.open("/projects/99/findings").status()).isEqualTo(404);
    }

    @Test
    void proposesTheSparesThatWouldHaveBeenEnough() {
        tutor.open("/projects/1/edit").press("Add a material");
        tutor.type("/materials/0/material", "zip").type("/materials/0/amount", "1").type("/materials/0/waste", "5").press("Save the project");
        String second = another();
        broken(second, "3 pcs");
        broken(another(), "2 pcs");

        tutor.open("/projects/1/findings");
        assertThat(tutor.page().select("section:has(h2:contains(zip))").text()).contains("From 2 classes: about 23 % spoils", "In the project: 5 % waste; proposed: 50 % waste");
        tutor.press(tutor.page().selectFirst("section:has(h2:contains(zip)) button:contains(Keep as it is)"));
        assertThat(tutor.page().select("section:has(h2:contains(zip)) button")).isEmpty();

        broken(another(), "0 pcs");
        tutor.open("/projects/1/findings").press("Take all into the project");
        assertThat(tutor.open("/projects/1/edit").field("/materials/0/waste")).isEqualTo("38");
        tutor.open("/projects/1/findings");
        assertThat(tutor.page().select("section:has(h2:contains(zip)) button")).isEmpty();
        assertThat(tutor.page().select("main li").eachText()).anyMatch(line -> line.contains("zip, taken: 38 % waste instead of 5 % waste"))
                .anyMatch(line -> line.contains("zip, kept: 5 % waste, not 50 % waste"));
    }

    private void broken(String craftClass, String amount) {
        tutor.open(craftClass + "/review").type("/materials/zip/broken", amount).press("Save the review");
        assertThat(tutor.status()).isEqualTo(200);
    }
}
