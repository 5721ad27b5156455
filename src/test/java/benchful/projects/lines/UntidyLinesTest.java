package benchful.projects.lines;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines as tutors write them down and copy them from letters and tables. */
class UntidyLinesTest {
    private final ObjectNode sheet = SpecFormat.json().createObjectNode();
    private final LineBoxes boxes = new LineBoxes(sheet, Map.of("sharp-tools", "Sharp hand tools", "hammering", "Hammering"));

    private String read(String list, String box) {
        boxes.read(list, box, "");
        return sheet.at(list).toString().replace("\"", "");
    }

    private List<String> doubts(String list, String box) {
        return boxes.read(list, box, "").doubts().stream().map(p -> p.key() + " " + p.doubt()).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "linen thread 30 cm + 5 x height | {material:linen thread,amount:30 cm + 5 x height}",
        "- 4 rivets | {material:rivets,amount:4}",
        "½ m elastic | {material:elastic,amount:0.5 m}",
        "waxed thread 18/3 1 1/2 m | {material:waxed thread 18/3,amount:1 1/2 m}",
        "beads 6 mm 20 | {material:beads 6 mm,amount:20}",
        "olive oil: 0,5 l; waste 5% | {material:olive oil,amount:0,5 l,waste:5}",
        "flux 3 ml, one for every 4 | {material:flux,amount:3 ml,shared:true,serves:4}",
        "mandrel 1, for each pair, lent | {material:mandrel,amount:1,shared:true,serves:2,lent:true}",
        "jump rings (4) | {material:jump rings,amount:4}",
        "30 cm ribbon, choose colour | {material:ribbon,amount:30 cm,choice:colour}",
        "cover card 2 pieces 12 x 9 cm, or grey card | {material:cover card,amount:12 cm,width:9 cm,pieces:2,alternatives:[grey card]}",
        "2 sheets of A4 paper | {material:A4 paper,amount:2 sheets}",
        "glue - 5 ml - shared | {material:glue,amount:5 ml,shared:true}",
        "1. sodium hydroxide 71 g (weigh in a dry jar) | {material:sodium hydroxide,amount:71 g,note:weigh in a dry jar}",
        "solder 60/40 about 15 g | {material:solder 60/40,amount:15 g}",
        "\"thread: the blue one\": 2 m | {material:thread: the blue one,amount:2 m}",
        "lining 2 x height by width + 1 cm | {material:lining,amount:2 x height,width:width + 1 cm,pieces:1}"
    })
    void readsAMaterial(String line, String row) {
        boxes.read("/sizes", "One: height 10 cm, width 7 cm", "");
        assertThat(read("/materials", line)).isEqualTo("[" + row + "]");
    }

    @Test
    void readsTheCellsOfATable() {
        assertThat(read("/materials", "Beeswax\t5 g\tone for the class\nPellets\t120 g")).isEqualTo("[{material:Beeswax,amount:5 g,shared:true},{material:Pellets,amount:120 g}]");
        assertThat(read("/sizes", "Size\theight (cm)\twidth\nSmall\t14,8\t10.5 cm\nTall\t21\t10.5 cm"))
                .isEqualTo("[{name:Small,measures:{height:14.8 cm,width:10.5 cm}},{name:Tall,measures:{height:21 cm,width:10.5 cm}}]");
        assertThat(read("/steps", "15 min\tSolder the seams\tsoldering iron")).contains("title:Solder the seams", "usual:15 min", "tool:soldering iron");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "book cloth 20 x 15 cm | /materials/0/amount Taken as one piece of 20 cm by 15 cm. Write “20 pieces of 15 cm” where it is that.",
        "cord 2 x 30 cm | /materials/0/amount Taken as 2 pieces of 30 cm. Write “2 cm by 30 cm” where it is a rectangle.",
        "PVA glue | /materials/0/amount No amount was found. Say how much one piece takes, such as 30 cm.",
        "ribbon 30 cm + 2 x girth | /materials/0/amount “girth” is no measure yet. Write it in the sizes, such as “Small: girth 15 cm”."
    })
    void saysWhatItTookForGrantedOfAMaterial(String line, String doubt) {
        assertThat(doubts("/materials", line)).containsExactly(doubt);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "needle 2 | {name:needle,owned:2}",
        "2 needles | {name:needles,owned:2}",
        "soldering iron x 3 | {name:soldering iron,owned:3}",
        "safety glasses, each their own | {name:safety glasses,personal:true}",
        "glass cutter (oil filled) | {name:glass cutter,note:oil filled}",
        "coiling mandrel 3 mm | {name:coiling mandrel 3 mm}",
        "scale, only 1 | {name:scale,owned:1}",
        "mallet, hazard hammering | {name:mallet,hazards:[hammering]}",
        "kettle, enough | {name:kettle}",
        "awl, bone folder, ruler | {name:awl},{name:bone folder},{name:ruler}"
    })
    void readsATool(String line, String row) {
        assertThat(read("/tools", line)).isEqualTo("[" + row + "]");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "4. Cut, score and fold the cover, 5/8/15 min, awl | title:Cut, score and fold the cover,tools:[{tool:awl,each:1}],kind:make,student:{quick:5 min,usual:8 min,slow:15 min}",
        "Sew the sections 4–6–10 min x 5, 2 awls | title:Sew the sections,tools:[{tool:awl,each:2}],kind:make,student:{quick:4 min,usual:6 min,slow:10 min},repeats:5",
        "Edge paint, two coats 6-8-12 min, awl | title:Edge paint, two coats,tools:[{tool:awl,each:1}],kind:make,student:{quick:6 min,usual:8 min,slow:12 min}",
        "wait: The glue sets, 24 h, at home | kind:wait,title:The glue sets,at_home:true,lasts:24 h",
        "show: Folding, 90 s, +30 s for each student | kind:show,title:Folding,per_student:30 s,lasts:1 min 30 s",
        "ahead: melt the wax: 45 min | kind:ahead,title:melt the wax,lasts:45 min",
        "together: Safety 1.5 min, hazard sharp tools, any time | kind:together,title:Safety,hazards:[sharp-tools],after:[],lasts:1 min 30 s",
        "wait: It dries, 20 min, at most 40 | kind:wait,title:It dries,at_most:40 min,lasts:20 min",
        "make: Print, 2-3-5 min, awl shared by 2 | kind:make,title:Print,tools:[{tool:awl,each:1,shared_by:2}],student:{quick:2 min,usual:3 min,slow:5 min}",
        "make: Print, 2-3-5 min, 2 awls for every 4 | kind:make,title:Print,tools:[{tool:awl,each:2,shared_by:4}],student:{quick:2 min,usual:3 min,slow:5 min}",
        "make: Print, 2-3-5 min, awl, in pairs | kind:make,title:Print,tools:[{tool:awl,each:1,shared_by:2}],student:{quick:2 min,usual:3 min,slow:5 min}",
        "make: Solder, 2-3-5 min, awl, the tutor beside each student | kind:make,title:Solder,tools:[{tool:awl,each:1}],beside:true,student:{quick:2 min,usual:3 min,slow:5 min}",
        "show: Folding, 10 min, may run over by 5 | kind:show,title:Folding,may_run_over:5 min,lasts:10 min",
        "together: Welcome 10 min, goes over by up to 5 min | kind:together,title:Welcome,may_run_over:5 min,lasts:10 min",
        "make: Press, 1-2-3 min, after Sew it | kind:make,title:Press,after:[{step:Sew it}],student:{quick:1 min,usual:2 min,slow:3 min}"
    })
    void readsAStep(String line, String row) {
        boxes.read("/tools", "awl", "");
        assertThat(read("/steps", line)).startsWith("[{" + row);
    }

    @Test
    void takesWhatStandsFurtherInAsWhatToDo() {
        assertThat(read("/steps", "  make: Trim, 3-4-5 min\n      Trim only the head.\n\n      - then the tail\n  Pour the wax. Stir it until it clouds. 10 min")).contains(
                "text:Trim only the head.\\n\\n- then the tail", "title:Pour the wax,text:Stir it until it clouds.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "glue the cover 6 min | /steps/0/student/usual Only the usual time is written. The quick are taken to need 4 min, the slow 9 min.",
        "make: glue it 5-10 min | /steps/0/student/usual Two times are written. The usual one is taken to be 8 min.",
        "dries 20 min | /steps/0/kind Taken as “wait” because of its words.",
        "together: Tidy up | /steps/0/lasts No time was found. Say how long it takes, such as 10 min.",
        "Sew 4-6-10 min each | /steps/0/repeats Each of how many? Write it behind the time, such as “4-6-10 min x 5”.",
        "Cut 4-6-10 min, knife | /steps/0/tools “knife” is new and was put among the tools.",
        "Cut 4-6-10 min, after noon | /steps/0/after There is no step “noon”. Write the title of the step that comes before."
    })
    void saysWhatItTookForGrantedOfAStep(String line, String doubt) {
        assertThat(doubts("/steps", line)).containsExactly(doubt);
    }

    @Test
    void givesABareNumberTheUnitOfItsMeasureAndSaysSo() {
        assertThat(doubts("/sizes", "Small: height 15 cm\nTall: height 21")).containsExactly("/sizes/1/measures/height “height” has no unit. It was taken to be cm.");
        assertThat(sheet.at("/sizes/1/measures/height").asText()).isEqualTo("21 cm");
        assertThat(sheet.at("/measures").toString()).isEqualTo("[{\"name\":\"height\",\"label\":\"Height\",\"unit\":\"cm\"}]");
    }

    /** Names that could be taken for who shares them are written in quotation marks or read by what is known. */
    @Test
    void writesWhoSharesAToolAsItIsReadBack() {
        boxes.read("/tools", "\"press, large\"\nmats in pairs", "");
        boxes.read("/steps", "make: Print, 2-3-5 min, \"press, large\" shared by 2, 3 x mats in pairs for every 4, mats in pairs, new roller in pairs, somebody beside each student", "");
        ObjectNode row = sheet.at("/steps/0").deepCopy();
        assertThat(sheet.at("/steps/0/tools").toString().replace("\"", "")).isEqualTo("[{tool:press, large,each:1,shared_by:2},{tool:mats in pairs,each:3,shared_by:4},"
                + "{tool:mats in pairs,each:1},{tool:new roller,each:1,shared_by:2}]");
        assertThat(boxes.written("/steps")).isEqualTo("make: Print, 2-3-5 min, somebody beside each student, \"press, large\" shared by 2, 3 x mats in pairs shared by 4, mats in pairs, new roller shared by 2");
        String were = boxes.written("/steps");
        boxes.read("/steps", were.replace("Print", "Print it"), were);
        assertThat(sheet.at("/steps/0")).isEqualTo(row.put("title", "Print it"));
    }

    @Test
    void keepsWhatLinesCanNotSayWhenALineIsChanged() {
        boxes.read("/steps", "make: Cut, 1-2-3 min\nmake: Sew, 4-6-10 min", "");
        ((ObjectNode) sheet.at("/steps/1")).put("link", "https://films.example/1").putArray("pictures").add("sewing");
        String were = boxes.written("/steps");
        Understanding changed = boxes.read("/steps", "make: Sew all round, 4-6-12 min\nmake: Press, 1-1-1 min", were);
        assertThat(sheet.at("/steps/0").toString()).contains("\"id\":\"sew\"", "\"pictures\":[\"sewing\"]", "\"title\":\"Sew all round\"", "\"slow\":\"12 min\"");
        assertThat(changed.taken()).containsExactly("make: Cut, 1-2-3 min");
    }

    @Test
    void carriesTheNewNameOfAToolToTheSteps() {
        boxes.read("/tools", "bone folder, (6 cm)", "");
        boxes.read("/steps", "make: Fold, 1-2-3 min, bone folder", "");
        boxes.read("/tools", "folder of bone, (6 cm)", boxes.written("/tools"));
        assertThat(sheet.at("/steps/0/tools/0/tool").asText()).isEqualTo("folder of bone");
    }
}
