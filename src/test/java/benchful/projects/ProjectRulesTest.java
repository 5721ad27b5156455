package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import benchful.web.forms.SpecReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProjectRulesTest {
    private static final SpecReader<ProjectSpec> READER = ProjectFiles.READER;
    private static final String SHEET = """
            name: Necklace
            craft: bead stringing
            level: beginner
            measures:
              - {name: length, label: Finished length, unit: cm}
            sizes:
              - {name: Short, measures: {length: 42 cm}}
              - {name: Long, measures: {length: 50 cm}}
            sizing:
              - name: strand
                kind: strand
                values: {target: length}
                beads: [{bead: pearl, size: 8 mm}]
            materials:
              - {material: pearl 8 mm, amount: strand_pearl}
              - {material: silk, amount: 2 * length + 40 cm, pieces: 1}
            tools:
              - {name: tweezers}
            steps:
              - {id: prepare, title: Cut silk, kind: ahead, lasts: 10 min}
              - {id: show, title: Watch, kind: show, lasts: 10 min}
              - {id: knot, title: Knot, kind: make, student: {quick: 20 s, usual: 30 s, slow: 50 s}, repeats: strand_knots, tools: [{tool: tweezers, each: 1}]}
              - {id: dry, title: The glue dries, kind: wait, lasts: 20 min, at_most: 1 h, after: [{step: knot, least: 1 min, most: 5 min}]}
            pictures:
              - {name: cover, media_type: image/png, content: AAAA}
            """;

    @Test
    void findsNothingWrongWithASoundSheet() {
        assertThat(faults(SHEET)).isEmpty();
    }

    @Test
    void letsTextsNameMeasuresAnswersAndMaterialsAndKeepsOtherBracketsAsText() {
        assertThat(faults(SHEET.replace("title: Knot,", "title: Knot, text: 'Cut <silk> for <length> (<finished length>), <strand_knots> knots; 3 < 4, <3, <br/>, <https://a.example>, < b >.',"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            title: Knot, | title: Knot, text: 'Cut <slik>.', | /steps/2/text
            title: Knot, | title: Knot, left_handed: 'Cut <slik>.', | /steps/2/left_handed
            craft: bead stringing | care: 'Keep <slik> dry.', craft: bead stringing | /care
            """)
    void saysWhatATextCannotBeFilledInWith(String part, String other, String at) {
        String sheet = part.startsWith("craft") ? SHEET.replace(part, "care: 'Keep <slik> dry.'\ncraft: bead stringing") : SHEET.replace(part, other);
        assertThat(faults(sheet)).singleElement().satisfies(fault -> {
            assertThat(fault.pointer()).isEqualTo(at);
            assertThat(fault.detail()).startsWith("“<slik>” is to be filled in, but no material, measure or working of this project is called so. It has <pearl 8 mm>, <silk>, <length>, ")
                    .endsWith("If it is only text, put a blank after the “<”.");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            name: Long,                | name: short,             | /sizes/1/name            | “short” is there already, as number 1. Give each its own name.
            id: dry                    | id: knot                 | /steps/3/id              | “knot” is there already, as number 3. Give each its own name.
            {name: length, label       | {name: cm, label         | /measures/0/name         | “cm” means something else in formulas. Choose a longer name, such as “length”.
            {name: length, label       | {name: strand_x, label   | /measures/0/name         | Names that start with “strand_” are answers of the working “strand”. Choose another name.
            {length: 50 cm}            | {}                       | /sizes/1/measures/length | Give “Finished length” for the size “Long”, such as 42 cm.
            {length: 50 cm}            | {length: 50 g}           | /sizes/1/measures/length | “50 g” is a mass, but a length is needed, such as 42 cm.
            {length: 50 cm}            | {length: 0 cm}           | /sizes/1/measures/length | This must be more than 0.
            {length: 50 cm}            | {length: 5 cm, width: 1} | /sizes/1/measures/width  | “width” is no measure of this project. Add it to the measures, or take it out here.
            {target: length}           | {closure: 3 mm}          | /sizing/0/values/target  | A strand needs its target.
            {target: length}           | {target: lenght}         | /sizing/0/values/target  | “lenght” is not known here. Known are length.
            {target: length}           | {target: 3 g}            | /sizing/0/values/target  | In “3 g”: it gives a mass, but a length is needed here.
            [{bead: pearl, size: 8 mm}] | []                      | /sizing/0/beads          | Give the pattern at least one bead with its size.
            amount: strand_pearl       | amount: pearls           | /materials/0/amount      | “pearls” is not known here. Known are length, strand_beads, strand_difference, strand_knots, strand_length, strand_pearl, strand_thread.
            2 * length + 40 cm         | 2 * (length              | /materials/1/amount      | In “2 * (length”: it can't be read (Closing brace not found). Use numbers, units, measures, + - * / and brackets, and ceil, floor, round, sqrt, min, max, awg, swg or us_ring.
            2 * length + 40 cm         | length - 45 cm           | /materials/1/amount      | This comes to -30 mm for the size “Short”; it can't be less than 0.
            pieces: 1                  | pieces: length           | /materials/1/pieces      | In “length”: it gives a length, but a count is needed here.
            quick: 20 s                | quick: 40 s              | /steps/2/student/quick   | The quick time can't be longer than the usual one, 30 s.
            slow: 50 s                 | slow: 10 s               | /steps/2/student/slow    | The slow time can't be shorter than the usual one, 30 s.
            slow: 50 s                 | slow: 61 d               | /steps/2/student/slow    | This is longer than 60 days. Write it like 20 min, 1 h 30 min or 24 h.
            student: {quick: 20 s, usual: 30 s, slow: 50 s}, | lasts: 5 min, | /steps/2/lasts | A make step takes one student's times instead. Empty this field.
            student: {quick: 20 s, usual: 30 s, slow: 50 s}, | `` | /steps/2/student/usual    | Give one student's quick, usual and slow times.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show | /steps/1/lasts | Say how long it lasts, such as 10 min.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show, lasts: 0 min | /steps/1/lasts | This must be longer than 0 min.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show, lasts: 1 min, share: 0.5 | /steps/1/share | Only a make step can have a share of students; this is a show step. Empty this field.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show, lasts: 1 min, at_home: true | /steps/1/at_home | Only a wait can end at home.
            lasts: 20 min, at_most: 1 h | lasts: 20 min, may_run_over: 5 min | /steps/3/may_run_over | Only what all watch or do together runs over. Empty this field; a make step has its slow time.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show, lasts: 1 min, may_run_over: 61 d | /steps/1/may_run_over | This is longer than 60 days. Write it like 20 min, 1 h 30 min or 24 h.
            lasts: 20 min, at_most: 1 h | lasts: 20 min, watchers: 5 | /steps/3/watchers | Only a demonstration is watched. Empty this field.
            title: Watch, kind: show, lasts: 10 min | title: Watch, kind: show, lasts: 1 min, watchers: 0 | /steps/1/watchers | Give how many can watch at once, from 1 to 200.
            at_most: 1 h               | at_most: 1 min           | /steps/3/at_most         | The longest time can't be shorter than the wait itself, 20 min.
            step: knot                 | step: knit               | /steps/3/after/0/step    | There is no step with the short name “knit”.
            most: 5 min                | most: 30 s               | /steps/3/after/0/most    | The greatest gap between “Knot” and “The glue dries” can't be shorter than the least one, 1 min.
            most: 5 min                | most: 61 d               | /steps/3/after/0/most    | This gap is longer than 60 days.
            {step: knot, least: 1 min, most: 5 min} | {step: knot}, {step: knot} | /steps/3/after/1/step | “knot” is there twice in this step. Name it once.
            kind: ahead, lasts: 10 min | kind: ahead, lasts: 10 min, after: [{step: show}] | /steps/0/after/0/step | A step done ahead of the class can't follow “show”, which is done in it.
            title: Watch,              | title: Watch, after: [{step: dry}], | /steps/1/after | These steps wait for each other in a circle: show → knot → dry → show. Take one of them out of “follows”.
            title: Watch,              | title: Watch, after: [{step: show}], | /steps/1/after | These steps wait for each other in a circle: show → show. Take one of them out of “follows”.
            tool: tweezers             | tool: pliers             | /steps/2/tools/0/tool    | “pliers” is not among the tools of this project. Add it there or choose another.
            amount: strand_pearl       | amount: strand_pearl, serves: 2 | /materials/0/serves | Only what is shared is there for several. Say that “pearl 8 mm” is shared, or leave this empty.
            amount: strand_pearl       | amount: strand_pearl, shared: true, serves: 1 | /materials/0/serves | Say for how many one such amount is there, from 2 to 200, or leave it empty for the whole class.
            pieces: 1                  | pieces: 1, lent: true    | /materials/1/lent        | What is cut does not come back. Leave out that “silk” is lent, or that it is cut.
            amount: strand_pearl       | amount: strand_pearl, lent: true, waste: 5 | /materials/0/lent | What comes back needs no waste. Leave out that “pearl 8 mm” is lent, or its waste.
            material: silk             | material: Pearl 8 mm, lent: true | /materials/1/lent | Another line of “Pearl 8 mm” says otherwise. Say on all its lines whether it comes back.
            title: Watch,              | title: Watch, picture: x, | /steps/1/pictures/0     | There is no picture “x” here. Add it to the pictures or choose another.
            """)
    void saysWhatDoesNotAgree(String right, String wrong, String pointer, String sentence) {
        assertThat(SHEET).contains(right);
        assertThat(faults(SHEET.replace(right, wrong))).contains(new Fault(pointer, sentence));
    }

    @Test
    void letsStepsOverlapAndMarkEachOthersTime() {
        assertThat(faults(SHEET.replace("title: Watch,", "title: Watch, after: [{step: dry, least: -1 h, most: -5 min}],"))).isEmpty();
        assertThat(faults(SHEET.replace("title: Watch,", "title: Watch, after: [{step: dry, least: -x min}],")))
                .containsExactly(new Fault("/steps/1/after/0/least", "Give a time, such as 10 min; -5 min where it may begin 5 min before the other ends."));
    }

    @Test
    void givesAStepThatNamesNothingTheOneBeforeItInClass() {
        ProjectSpec sheet = ((SpecReader.Read<ProjectSpec>) READER.file(SHEET.getBytes(StandardCharsets.UTF_8))).sheet();
        assertThat(sheet.predecessors(0)).isEmpty();
        assertThat(sheet.predecessors(1)).isEmpty();
        assertThat(sheet.predecessors(2)).containsExactly(new Step.After("show", null, null));
        assertThat(sheet.predecessors(3)).isEqualTo(sheet.steps().get(3).after());
    }

    private static List<Fault> faults(String file) {
        return READER.file(file.getBytes(StandardCharsets.UTF_8)) instanceof SpecReader.Faulty<ProjectSpec> f ? f.faults() : List.of();
    }
}
