package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.pictures.Picture;
import benchful.web.StoredEntity;
import benchful.web.Visitor;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class ProjectsPagesTest {
    private static final byte[] DRAWING = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><circle r=\"3\"/></svg>".getBytes(StandardCharsets.UTF_8);

    @TestHTTPResource
    URL start;

    private Visitor tutor;

    @BeforeEach
    void meet() {
        tutor = new Visitor(start);
    }

    @AfterEach
    void clear() {
        QuarkusTransaction.requiringNew().run(() -> Project.delete("name like 'Test %'"));
    }

    @Test
    void writesAProjectFromABlankForm() {
        tutor.open("/projects/new");
        tutor.type("/name", "Test ring").type("/craft", "silver").type("/level", "improver").type("/summary", "A *plain* ring.")
                .press("Add a measure");
        tutor.type("/measures/0/name", "inner").type("/measures/0/label", "Inside").type("/measures/0/unit", "mm").press("Add a size");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.field("/name")).isEqualTo("Test ring");
        tutor.press("Add a material").press("Add a step");
        tutor.type("/sizes/0/name", "M").type("/sizes/0/measures/inner", "17.2")
                .type("/sizes/1/name", "L").type("/sizes/1/measures/inner", "18,2 mm")
                .type("/materials/0/material", "wire 2 mm").type("/materials/0/amount", "pi * (inner + 2 mm)").type("/materials/0/pieces", "1")
                .type("/steps/0/title", "Bend").type("/steps/0/kind", "make")
                .type("/steps/0/student/quick", "5 min").type("/steps/0/student/usual", "8 min").type("/steps/0/student/slow", "15 min")
                .press("Add a picture");
        tutor.type("/pictures/0/alt", "A ring").pick("file:/pictures/0", "My Cover.SVG", "image/svg+xml", DRAWING).press("Save the project");

        assertThat(tutor.status()).as(tutor.toString()).isEqualTo(200);
        assertThat(tutor.path()).matches("/projects/\\d+");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Test ring");
        assertThat(tutor.page().select(".prose em").text()).isEqualTo("plain");
        assertThat(tutor.rows("table")).contains("Size | Inside | At the bench", "M | 17.2 mm | 8 min", "L | 18.2 mm | 8 min");
        assertThat(tutor.rows("table")).anySatisfy(row -> assertThat(row).startsWith("wire 2 mm | 1 × 60.32 mm | 1 × 63.46 mm | in the kit"));
        Element cover = tutor.page().selectFirst("header.piece img");
        assertThat(cover.attr("alt")).isEqualTo("A ring");
        assertThat(new Visitor(start).open(cover.attr("src")).bytes()).isEqualTo(DRAWING);
    }

    @Test
    void readsAProjectFromPastedLinesAndShowsWhatWasTakenForGranted() {
        tutor.open("/projects/new").type("/name", "Test pouch").type("/craft", "leather").type("lines/sizes", "Small: height 10 cm\nTall: height 14")
                .type("lines/materials", "• linen thread 30 cm + 5 x height\n• leather 2 pieces of height by 8 cm").type("lines/tools", "awl\nneedle 2")
                .type("lines/steps", "1. Welcome 10 min\n2. Sew the sides, 15-25-40 min, needle, thimble\n   Two needles on one thread.\n3. Wax the edge")
                .press("Read these lines");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select(".understood").eachText()).contains("2 lines read. Look at one of them: what was taken for granted is marked. Taken out: “One size”.");
        assertThat(tutor.page().select(".check").eachText()).contains("height: “height” has no unit. It was taken to be cm.", "Tool: “thimble” is new and was put among the tools.",
                "Time: No time was found. Say how long it takes, such as 10 min, or 5-10-20 min for the quick, the usual and the slow.");
        assertThat(tutor.field("/steps/1/student/usual")).isEqualTo("25 min");
        assertThat(tutor.field("lines/steps")).as("as it was typed").contains("3. Wax the edge");
        tutor.type("/steps/2/student/quick", "2").type("/steps/2/student/usual", "3.5 min").type("/steps/2/student/slow", "1:30 min").press("Save the project");
        assertThat(tutor.faults()).contains("The slow time can't be shorter than the usual one, 3 min 30 s.").hasSize(2);
        assertThat(tutor.field("lines/steps")).contains("  Two needles on one thread.\nmake: Wax the edge, 2 min to 3 min 30 s to 1 min 30 s");
        tutor.type("/steps/2/student/slow", "5").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/\\d+");
        assertThat(tutor.rows("table")).anySatisfy(row -> assertThat(row).startsWith("linen thread | 80 cm | 100 cm"));
        tutor.follow("Edit").type("lines/steps", tutor.field("lines/steps").replace("Wax the edge", "Wax and rub the edge")).press("Save the project");
        assertThat(tutor.page().select("ol.steps .title").eachText()).containsExactly("Welcome", "Sew the sides", "Wax and rub the edge");
    }

    @Test
    void keepsTypedValuesAndPickedPicturesWhenInvalid() {
        tutor.open("/projects/new").type("/craft", "silver <b>").press("Add a picture").press("Add a step");
        tutor.type("/steps/0/title", "Bend & hammer").pick("file:/pictures/0", "cover.svg", "image/svg+xml", DRAWING).press("Save the project");

        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/craft")).isEqualTo("silver <b>");
        assertThat(tutor.field("/steps/0/title")).isEqualTo("Bend & hammer");
        assertThat(tutor.field("/pictures/0/name")).isEqualTo("cover");
        assertThat(tutor.page().select("fieldset.picture img").attr("src")).startsWith("/projects/pictures/");
        assertThat(tutor.faults()).contains("Give the project a name of up to 120 characters.", "Choose show, make, wait, together, ahead, between, homework or collect.");
        assertEveryFaultLeadsSomewhere();

        tutor.type("/name", "Test ring").type("/level", "beginner").type("/sizes/0/name", "M").type("/steps/0/kind", "show").type("/steps/0/lasts", "5 min").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/\\d+");
        assertThat(tutor.page().select("header.piece img")).hasSize(1);
    }

    @Test
    void saysWhatIsWrongWithEachKindOfPlace() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id + "/edit")
                .type("/sizes/0/measures/finger", "5 g").type("/materials/0/amount", "finger +").type("/steps/1/student/quick", "1 d")
                .type("/steps/2/after/0/step", "thread").type("/steps/1/after/0/step", "tidy").type("/minimum_age", "200")
                .press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).anySatisfy(f -> assertThat(f).contains("Give the youngest age"));
        assertEveryFaultLeadsSomewhere();

        tutor.type("/minimum_age", "9").press(button("remove", "/tools/0")).press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).anySatisfy(f -> assertThat(f).contains("“5 g” is a mass, but a length is needed"))
                .anySatisfy(f -> assertThat(f).contains("can't be read"))
                .anySatisfy(f -> assertThat(f).contains("in a circle: thread → tidy → thread"))
                .anySatisfy(f -> assertThat(f).contains("“needle” is not among the tools"));
        assertEveryFaultLeadsSomewhere();
        assertThat(tutor.page().select("details.step[open]")).as("steps with faults are open").hasSize(1);
    }

    @Test
    void changesAProjectAndCarriesANewNameOn() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id + "/edit").type("/name", "Test band").type("/tools/0/name", "bead needle")
                .type("/measures/0/name", "girth").type("/steps/1/id", "string").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).isEqualTo("/projects/" + id);
        ProjectSpec sheet = sheet(id);
        assertThat(sheet.name()).isEqualTo("Test band");
        assertThat(sheet.sizes().get(0).measures()).containsOnlyKeys("girth");
        assertThat(sheet.materials().get(1).amount()).isEqualTo("girth + 10 cm");
        assertThat(sheet.steps().get(1).tools().get(0).tool()).isEqualTo("bead needle");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void savesAnyProjectUnchangedFromItsForm(long seed) {
        ProjectSpec generated = ProjectSpecs.generated(seed).withName("Test " + seed);
        ProjectSpec sheet = generated.withPictures(generated.pictures().stream().map(p -> new Picture(p.name(), "image/svg+xml", p.alt(), DRAWING)).toList());
        long id = QuarkusTransaction.requiringNew().call(() -> Project.stored(sheet, false, Instant.EPOCH).id());
        tutor.open("/projects/" + id + "/edit").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).isEqualTo("/projects/" + id);
        assertThat(tutor.status()).as(tutor.toString()).isEqualTo(200);
        assertThat(full(id)).isEqualTo(sheet);
    }

    static List<Long> seeds() {
        return List.of(1L, 2L, 3L, 5L, 8L, 13L, 21L, 34L);
    }

    @Test
    void showsASecondEditorBothVersions() {
        long id = stored("Test ring");
        Visitor other = new Visitor(start).open("/projects/" + id + "/edit");
        tutor.open("/projects/" + id + "/edit").type("/summary", "Mine").press("Save the project");
        other.type("/summary", "Theirs").press("Save the project");

        assertThat(other.status()).isEqualTo(409);
        assertThat(other.rows(".summary.stale")).containsExactly("Place | Saved by somebody else | Yours", "summary | Mine | Theirs");
        assertThat(other.field("/summary")).isEqualTo("Theirs");
        assertThat(sheet(id).summary()).isEqualTo("Mine");

        other.press("Save the project");
        assertThat(sheet(id).summary()).isEqualTo("Theirs");
    }

    @Test
    void refusesTheNameOfAnotherProject() {
        stored("Test ring");
        long id = stored("Test band");
        tutor.open("/projects/" + id + "/edit").type("/name", "TEST RING").press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().get(0)).startsWith("There is another project of this name.");
    }

    @Test
    void keepsAStoredPictureUnderANewNameAndReplacesItByAnotherFile() {
        ProjectSpec ring = ProjectSpecs.beadRing("Test ring").withPictures(List.of(new Picture("one", "image/svg+xml", "x", DRAWING)));
        long id = QuarkusTransaction.requiringNew().call(() -> Project.stored(ring, false, Instant.EPOCH).id());
        tutor.open("/projects/" + id + "/edit").type("/pictures/0/name", "two").type("/name", "").press("Save the project");
        assertThat(tutor.page().select("fieldset.picture img").attr("src")).isEqualTo("/projects/" + id + "/pictures/one");
        tutor.type("/name", "Test ring").press("Save the project");
        assertThat(full(id).pictures()).containsExactly(new Picture("two", "image/svg+xml", "x", DRAWING));

        tutor.open("/projects/" + id + "/edit").pick("file:/pictures/0", "x.svg", "image/svg+xml", "<script/>".getBytes(StandardCharsets.UTF_8)).press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().get(0)).startsWith("This file is no SVG drawing");
        assertEveryFaultLeadsSomewhere();
    }

    @Test
    void servesPicturesSoThatNothingInThemActs() {
        ProjectSpec ring = ProjectSpecs.beadRing("Test ring").withPictures(List.of(new Picture("one", "image/svg+xml", "x", DRAWING)));
        long id = QuarkusTransaction.requiringNew().call(() -> Project.stored(ring, false, Instant.EPOCH).id());
        tutor.open("/projects/" + id + "/pictures/one");
        assertThat(tutor.answer().contentType()).isEqualTo("image/svg+xml");
        assertThat(tutor.answer().header("Content-Security-Policy")).startsWith("default-src 'none'");
        assertThat(tutor.answer().header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(tutor.answer().header("ETag")).isNotBlank();
        assertThat(tutor.open("/projects/" + id + "/pictures/none").status()).isEqualTo(404);
    }

    @Test
    void movesAndRemovesRowsWithoutSaving() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id + "/edit").press(button("up", "/sizes/1"));
        assertThat(tutor.field("/sizes/0/name")).isEqualTo("Large");
        tutor.press(button("remove", "/sizes/0"));
        assertThat(tutor.page().select("[name^=/sizes/][name$=/name]").eachAttr("value")).containsExactly("Small");
        tutor.press("Add a working");
        assertThat(tutor.field("/sizing/0/kind")).isEqualTo("strand");
        assertThat(tutor.page().select("[name=/sizing/0/values/target]")).hasSize(1);
        assertThat(sheet(id).sizes()).extracting(Size::name).containsExactly("Small", "Large");
    }

    @Test
    void findsProjectsByWordCraftAndLevel() {
        stored("Test ring");
        assertThat(tutor.open("/projects?words=test+RING&craft=bead+stringing&level=beginner").page().select(".card h2").eachText()).contains("Test ring");
        assertThat(tutor.open("/projects?words=test&level=experienced").page().select(".card h2").eachText()).isEmpty();
        assertThat(tutor.page().text()).contains("No project fits.");
    }

    @Test
    void copiesArchivesAndRemoves() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id).press("Copy");
        assertThat(tutor.path()).matches("/projects/\\d+/edit").isNotEqualTo("/projects/" + id + "/edit");
        assertThat(tutor.field("/name")).isEqualTo("Test ring (copy)");
        tutor.open("/projects/" + id).press("Copy");
        assertThat(tutor.field("/name")).isEqualTo("Test ring (copy 2)");

        tutor.open("/projects/" + id).press("Archive");
        assertThat(tutor.page().select(".tag").eachText()).contains("archived");
        assertThat(tutor.open("/projects").page().select(".archive .card h2").eachText()).contains("Test ring");
        tutor.open("/projects/" + id).press("Bring back");
        assertThat(tutor.page().select(".button").eachText()).contains("Plan a class");

        tutor.press("Remove");
        assertThat(tutor.path()).isEqualTo("/projects");
        assertThat(tutor.open("/projects/" + id).status()).isEqualTo(404);
    }

    @Test
    void keepsAProjectThatAClassUses() {
        long id = stored("Test ring");
        QuarkusTransaction.requiringNew().run(() -> Project.getEntityManager().createNativeQuery("""
                insert into craft_class (project_id, starts_at, ends_at, setup)
                values (?1, '2027-03-06 10:00', '2027-03-06 12:00', '{"title": "Test class"}')""").setParameter(1, id).executeUpdate());
        try {
            tutor.open("/projects/" + id).press("Remove");
            assertThat(tutor.status()).isEqualTo(409);
            assertThat(tutor.page().text()).contains("Test class on Sat 6 Mar 2027");
            assertThat(sheet(id).name()).isEqualTo("Test ring");
        } finally {
            QuarkusTransaction.requiringNew().run(() -> Project.getEntityManager()
                    .createNativeQuery("delete from craft_class where project_id = ?1").setParameter(1, id).executeUpdate());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/projects/999999", "/projects/999999/edit", "/projects/999999/file", "/projects/99999999999999999999", "/projects/x"})
    void saysNotFoundInWords(String path) {
        tutor.open(path);
        assertThat(tutor.status()).isEqualTo(404);
        assertThat(tutor.page().select("h1").text()).isEqualTo("Not found");
    }

    @Test
    void savesAProjectAsAFileThatComesBackWhole() {
        ProjectSpec ring = ProjectSpecs.beadRing("Test ring").withPictures(List.of(new Picture("one", "image/svg+xml", "x", DRAWING)));
        long id = QuarkusTransaction.requiringNew().call(() -> Project.stored(ring, false, Instant.EPOCH).id());
        byte[] file = tutor.open("/projects/" + id + "/file").bytes();
        assertThat(tutor.answer().header("Content-Disposition")).isEqualTo("attachment; filename=\"test-ring.yaml\"");
        assertThat(new String(file, StandardCharsets.UTF_8)).startsWith("benchful: project/1\nname: Test ring\n");

        tutor.open("/projects/imports").pick("file", "ring.yaml", "application/yaml", file).press("Import");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().select(".summary").text()).contains("There is a project of this name already", "both say the same");
        tutor.press("Import as a copy");
        assertThat(tutor.page().select("h1").text()).isEqualTo("Test ring (copy)");

        new Visitor(start).open("/projects/" + id + "/edit").type("/summary", "Changed").press("Save the project");
        tutor.open("/projects/imports").pick("file", "ring.yaml", "application/yaml", file).press("Import");
        assertThat(tutor.rows(".summary")).contains("summary | Changed | A ring of beads.");
        tutor.press("Replace what is here");
        assertThat(tutor.path()).isEqualTo("/projects/" + id);
        assertThat(full(id)).isEqualTo(ring);
    }

    @Test
    void listsTheFaultsOfAFileWithTheirLines() {
        String file = "benchful: project/1\nname: Test ring\ncraft: silver\nlevel: wizard\nsizes:\n  - name: M\nsteps:\n  - {id: a, title: A, kind: show, lasts: never}\n";
        tutor.open("/projects/imports").pick("file", "ring.yaml", "application/yaml", file.getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary li").eachText()).containsExactlyInAnyOrder(
                "Choose beginner, improver or experienced. line 4, /level",
                "Give a time, such as 20 min, 1 h 30 min or 24 h. line 8, /steps/0/lasts");
        assertThat(tutor.page().select("a[href=/schema/project-1.json]")).hasSize(1);

        tutor.pick("file", "ring.yaml", "application/yaml", new byte[] {(byte) 0xE9, 1, 2}).press("Import");
        assertThat(tutor.page().select(".summary li").text()).contains("not in UTF-8");
        tutor.open("/projects/imports").press("Import");
        assertThat(tutor.page().select(".summary li").text()).isEqualTo("Choose a file first.");
    }

    @Test
    void takesNoFormFromAnotherPage() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id);
        tutor.page().select("input[name=form-key]").forEach(key -> key.val("forged"));
        tutor.press("Archive");
        assertThat(tutor.status()).isEqualTo(403);
        assertThat(tutor.page().select("h1").text()).isEqualTo("Nothing was lost: send it again");
        assertThat(QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, id).orElseThrow().archived())).isFalse();
    }

    @Test
    void publishesTheSchema() {
        assertThat(tutor.open("/schema/project-1.json").status()).isEqualTo(200);
        assertThat(tutor.answer().body()).contains("https://json-schema.org/draft/2020-12/schema");
    }

    private Element button(String name, String value) {
        return tutor.page().selectFirst("button[name=%s][value=%s]".formatted(name, value));
    }

    @Test
    void refusesHazardsThatTheLibraryDoesNotKnowFromTheFormAndFromAFile() {
        long id = stored("Test ring");
        tutor.open("/projects/" + id + "/edit").type("/hazards/0", "epoxi").type("/steps/1/hazards/0", "soldering-fume").press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/hazards/0")).isEqualTo("epoxi");
        assertThat(tutor.faults()).contains(
                "“epoxi” is not in the hazard library. Did you mean “epoxy”? If not, choose another of its short names, or add this one there first.",
                "“soldering-fume” is not in the hazard library. Did you mean “solder-fume”? If not, choose another of its short names, or add this one there first.");
        assertEveryFaultLeadsSomewhere();

        String yaml = ProjectFiles.READER.yaml(unknownHazard("Test file"));
        tutor.open("/projects/imports").pick("file", "ring.yaml", "application/yaml", yaml.getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("main").text()).contains("“epoxi” is not in the hazard library. Did you mean “epoxy”?").contains(", /hazards/0");
    }

    @Test
    void opensWhatWasStoredWithAnUnknownHazardAndSaysHowToMendIt() {
        long id = QuarkusTransaction.requiringNew().call(() -> Project.stored(unknownHazard("Test ring"), false, Instant.EPOCH).id());
        assertThat(tutor.open("/projects/" + id).page().select(".tag.warn").text()).startsWith("“epoxi” is not in the hazard library");
        tutor.open("/projects/" + id + "/edit");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.faults()).isNotEmpty().allSatisfy(fault -> assertThat(fault).contains("Did you mean “epoxy”?"));
        assertEveryFaultLeadsSomewhere();
        tutor.type("/hazards/0", "epoxy").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).isEqualTo("/projects/" + id);
        assertThat(tutor.page().select(".tag.warn")).isEmpty();
    }

    private static ProjectSpec unknownHazard(String name) {
        ObjectNode tree = (ObjectNode) ProjectFiles.READER.written(ProjectSpecs.beadRing(name));
        tree.putArray("hazards").add("epoxi");
        return ((SpecReader.Read<ProjectSpec>) ProjectFiles.READER.tree(tree)).sheet();
    }

    private void assertEveryFaultLeadsSomewhere() {
        for (Element link : tutor.page().select(".summary.faulty a[href^=#]")) {
            assertThat(tutor.page().getElementById(link.attr("href").substring(1))).as("the place of: %s", link.text()).isNotNull();
        }
    }

    private static long stored(String name) {
        return QuarkusTransaction.requiringNew().call(() -> Project.stored(ProjectSpecs.beadRing(name), false, Instant.EPOCH).id());
    }

    private static ProjectSpec sheet(long id) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, id).orElseThrow().toSpec());
    }

    private static ProjectSpec full(long id) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, id).orElseThrow().toFullSheet());
    }
}
