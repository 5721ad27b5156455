package benchful.plans.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import benchful.core.lesson.risk.Risk;
import benchful.plans.StepNumbers;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PlanPictureTest {

    @Test
    void numbersStepsAsTheClassComesToThemAWaitBeforeTheWorkThatFillsItAndWhatGoesOnAtHomeLast() {
        assertThat(StepNumbers.of(DrawnPlans.strand()))
                .containsExactly(
                        java.util.Map.entry("welcome", 1), java.util.Map.entry("show", 2), java.util.Map.entry("soak", 3),
                        java.util.Map.entry("lay", 4), java.util.Map.entry("knot", 5), java.util.Map.entry("tip", 6),
                        java.util.Map.entry("tidy", 7), java.util.Map.entry("cure", 8));
    }

    @Test
    void saysInWordsWhatItShows() throws Exception {
        Element svg = drawn(DrawnPlans.strand(), 960).getDocumentElement();
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Timed plan, Sat 6 Mar 2027, 10:00 to 13:10");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                .startsWith("1 Welcome and safety talk, 10:00 to 10:10; 2 Watch: the first knot, 10:10 to 10:25; 3 Soak")
                .contains("5 Knot the strand <bead by bead>, 10:45 to 12:50")
                .contains("8 Leave the glue to cure, 12:53 to Sun 7 Mar 2027, 12:53");
        assertThat(texts(svg)).anyMatch(text -> text.equals("over by 10 min"));
    }

    @Test
    void drawsTimesToScale() throws Exception {
        NodeList rects = drawn(DrawnPlans.strand(), 960).getElementsByTagName("rect");
        List<Double> wide = IntStream.range(0, rects.getLength()).mapToObj(i -> (Element) rects.item(i))
                .filter(rect -> rect.getAttribute("fill").equals("#e3edef")).map(rect -> Double.valueOf(rect.getAttribute("width"))).toList();
        double minute = wide.get(0) / 15;
        assertThat(wide.subList(0, 4)).hasSize(4);
        assertThat(wide.get(1)).isCloseTo(45 * minute, offset(0.1));
        assertThat(wide.get(2)).isCloseTo(65 * minute, offset(0.1));
    }

    /** With letters of 13 px hours begin at 6.6 x 13 and end a pixel before the edge; nine classes in ten have ended 40 minutes after the booked end. */
    @Test
    void reachesToTheLateEndOfTheClass() {
        Risk.BlockRisk tidy = new Risk.BlockRisk("tidy", 0, DrawnPlans.at(180), DrawnPlans.at(195), DrawnPlans.at(220), DrawnPlans.at(190), DrawnPlans.at(220), 0);
        String svg = new PlanPicture(DrawnPlans.strand(), List.of(), List.of(tidy), 960, 13, "plan").svg();
        double minute = (959 - 6.6 * 13) / 220;
        assertThat(svg).contains("x=\"%s\"".formatted(Svg.n(6.6 * 13 + 195 * minute)), "width=\"%s\"".formatted(Svg.n(25 * minute)));
    }

    @ParameterizedTest
    @ValueSource(ints = {320, 640, 960, 2000})
    void staysWithinItsFrame(int width) throws Exception {
        Document picture = drawn(DrawnPlans.strand(), width);
        double height = Double.parseDouble(picture.getDocumentElement().getAttribute("height").replace("px", ""));
        NodeList rects = picture.getElementsByTagName("rect");
        for (int i = 0; i < rects.getLength(); i++) {
            Element rect = (Element) rects.item(i);
            assertThat(number(rect, "x") + number(rect, "width")).isLessThanOrEqualTo(width);
            assertThat(number(rect, "y") + number(rect, "height")).isLessThanOrEqualTo(height);
        }
    }

    private static double number(Element rect, String name) {
        return Double.parseDouble(rect.getAttribute(name));
    }

    private static List<String> texts(Element svg) {
        NodeList texts = svg.getElementsByTagName("text");
        return IntStream.range(0, texts.getLength()).mapToObj(i -> texts.item(i).getTextContent()).toList();
    }

    private static Document drawn(benchful.core.lesson.LessonPlan plan, int width) throws Exception {
        String svg = new PlanPicture(plan, DrawnPlans.pause(), List.of(), width, 13, "plan").svg();
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
