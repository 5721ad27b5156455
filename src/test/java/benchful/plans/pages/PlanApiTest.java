package benchful.plans.pages;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import benchful.classes.ClassFile;
import benchful.samples.SampleFiles;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class PlanApiTest {
    private static final SampleFiles FILES = SampleFiles.read();

    @Test
    void answersTheWholePlanAndTheSameOneTwice() throws Exception {
        String first = planned(SpecFormat.yaml().writeValueAsString(strand())).body("lesson.blocks.size()", greaterThan(15))
                .body("materials.kits.size()", equalTo(11))
                .body("materials.total", notNullValue())
                .body("materials.materials[0].need.reasons.size()", greaterThan(2))
                .extract().asString();
        assertThat(planned(SpecFormat.json().writeValueAsString(strand())).extract().asString()).isEqualTo(first);
    }

    @Test
    void carriesOrderChanceQuantilesAndSuggestions() throws Exception {
        ObjectNode file = strand();
        put(file, "/class/meetings/0", "ends", "\"17:00\"");
        JsonNode plan = SpecFormat.json().readTree(given().contentType("application/json").body(SpecFormat.json().writeValueAsString(file))
                .when().post("/api/plan?suggestions=true").then().statusCode(200).extract().asString());
        assertThat(plan.at("/lesson/proof/method").asText()).isEqualTo("solver");
        assertThat(plan.at("/lesson/proof/bound").asText()).isEqualTo(plan.at("/lesson/proof/finish").asText());
        assertThat(plan.at("/risk/classes").asInt()).isEqualTo(5_000);
        assertThat(plan.at("/risk/finishes")).hasSize(21);
        assertThat(plan.at("/risk/blocks")).allSatisfy(block ->
                assertThat(block.get("late_end").asText()).isGreaterThanOrEqualTo(block.get("likely_end").asText()));
        assertThat(plan.at("/suggestions/suggestions")).isNotEmpty().allSatisfy(suggestion ->
                assertThat(suggestion.at("/what_if/fields")).isNotEmpty());
        JsonNode first = plan.at("/suggestions/suggestions/0");
        assertThat(first.get("chance").asDouble()).isGreaterThan(plan.at("/suggestions/chance").asDouble());
    }

    @Test
    void carriesKitsSheetsCuttingAndPurchasesWithTheirProof() throws Exception {
        String file = SpecFormat.json().writeValueAsString(fileOf("First metal, a bookmark in a day"));
        JsonNode plan = SpecFormat.json().readTree(given().contentType("application/json").body(file)
                .when().post("/api/plan").then().statusCode(200).extract().asString()).get("materials");
        JsonNode brass = plan.at("/materials/0");
        assertThat(plan.at("/kits/0/contents/0/rectangle/width").asText()).isEqualTo("20 mm");
        assertThat(brass.at("/sheets/proven").asBoolean()).isTrue();
        assertThat(brass.at("/sheets/bound")).isEqualTo(brass.at("/sheets/cost"));
        assertThat(brass.at("/sheets/sheets/0/pieces")).hasSize(9);
        assertThat(brass.at("/sheets/sheets/0/cuts")).isNotEmpty();
        assertThat(plan.get("materials")).filteredOn(m -> m.has("cutting")).isNotEmpty()
                .allSatisfy(m -> assertThat(m.at("/cutting/proven").asBoolean()).isTrue());
        assertThat(plan.get("bound").asText()).isEqualTo(plan.get("total").asText());
        assertThat(plan.get("proof").asText()).startsWith("Proven least");
    }

    @Test
    void leavesSuggestionsOutWhereTheyAreNotAskedFor() throws Exception {
        given().contentType("application/json").body(SpecFormat.json().writeValueAsBytes(strand()))
                .when().post("/api/plan").then().statusCode(200).body("suggestions", nullValue()).body("risk.on_time", notNullValue());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /venue/tools               | {"bead board": 0, "beading needle": 0}                | but the room has 0
            /project/steps/3/after     | [{"step": "welcome", "least": "5 min", "most": "-90 min"}] | greatest gap
            /project/steps/1/after     | [{"step": "knot", "least": "-60 d", "most": "-59 d"}]   | No order keeps the greatest gaps between
            """)
    void namesTheStepsThatContradictEachOther(String pointer, String value, String words) throws Exception {
        ObjectNode file = strand();
        int slash = pointer.lastIndexOf('/');
        put(file, pointer.substring(0, slash), pointer.substring(slash + 1), value);
        JsonNode answer = SpecFormat.json().readTree(given().contentType("application/json").body(SpecFormat.json().writeValueAsBytes(file))
                .when().post("/api/plan").then().extract().asString());
        assertThat(answer.path("conflicts").toString() + answer.path("errors")).contains(words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /class/headcount           | 0                    | Enter a number of students from 1 to 200.
            /class/level               | "expert"             | Choose beginner, improver or experienced.
            /class/sizes               | {"Huge": 3}          | has no size “Huge”
            /class/meetings            | []                   | at least one meeting
            /project/materials/0/amount| "2 * lenght"         | “lenght”
            /project/materials/0/amount| "2 * length + 3 g"   | a mass can't be added to a length
            /project/steps/3/after     | [{"step": "nowhere"}]| nowhere
            /project/steps/1/lasts     | "NaN min"            | Give a time
            /project/hazards           | ["epoxi"]            | Did you mean “epoxy”?
            /materials/0/hazards       | ["soldering-fume"]   | is not in the hazard library
            /project/sizes/0/measures  | {"length": "-4 cm"}  | Give an amount with its unit
            """)
    void namesEachFaultByItsPath(String pointer, String value, String words) throws Exception {
        ObjectNode file = strand();
        int slash = pointer.lastIndexOf('/');
        put(file, pointer.substring(0, slash), pointer.substring(slash + 1), value);
        given().contentType("application/json").body(SpecFormat.json().writeValueAsBytes(file))
                .when().post("/api/plan")
                .then().statusCode(422)
                .contentType("application/problem+json")
                .body("status", equalTo(422))
                .body("errors.detail", hasItem(containsString(words)))
                .body("errors.pointer", hasItem(containsString(pointer.split("/")[1])));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''                                  | holds no sheet
            [1, 2]                              | holds no sheet
            {"project":                         | can't be read
            a: &a [x,x]                         | missing
            """)
    void refusesWhatIsNoClassFile(String body, String words) {
        given().contentType("application/yaml").body(body.getBytes(StandardCharsets.UTF_8))
                .when().post("/api/plan").then().statusCode(422).body("errors.detail", hasItem(containsString(words)));
    }

    @Test
    void refusesOtherEncodingsAndKindsOfBody() {
        given().contentType("application/yaml").body("name: Zofia Błażejewska".getBytes(StandardCharsets.UTF_16))
                .when().post("/api/plan").then().statusCode(422).body("errors[0].detail", containsString("UTF-8"));
        given().contentType("image/png").body(new byte[] {1}).when().post("/api/plan").then().statusCode(415)
                .contentType("application/problem+json");
        given().when().get("/api/nothing").then().statusCode(404).contentType("application/problem+json");
    }

    @Test
    void describesItselfAsOpenApi() {
        given().when().get("/q/openapi").then().statusCode(200).body(containsString("/api/plan"));
        given().when().get("/schema/class-1.json").then().statusCode(200).body("title", containsString("class"));
    }

    private static io.restassured.response.ValidatableResponse planned(String file) {
        return given().contentType(file.startsWith("{") ? "application/json" : "application/yaml").body(file.getBytes(StandardCharsets.UTF_8))
                .when().post("/api/plan").then().statusCode(200);
    }

    private static ObjectNode strand() throws Exception {
        return fileOf("Knotted strand, Saturday");
    }

    private static ObjectNode fileOf(String title) throws Exception {
        SampleFiles.SampleClass c = FILES.classes().stream().filter(x -> x.setup().title() != null && x.setup().title().startsWith(title)).findFirst().orElseThrow();
        ClassFile file = new ClassFile(
                FILES.projects().stream().filter(p -> p.name().equals(c.project())).findFirst().orElseThrow(), c.setup(),
                FILES.venues().stream().filter(v -> v.name().equals(c.venue())).findFirst().orElseThrow(),
                FILES.catalogue().materials(), FILES.catalogue().suppliers());
        return (ObjectNode) SpecFormat.json().readTree(SpecFormat.json().writeValueAsString(file));
    }

    private static void put(ObjectNode file, String parent, String key, String json) throws Exception {
        var at = parent.isEmpty() ? file : file.at(parent);
        var value = SpecFormat.json().readTree(json);
        ((ObjectNode) at).set(key, value);
    }
}
