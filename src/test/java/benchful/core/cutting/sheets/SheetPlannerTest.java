package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetPlannerTest {
    @Test
    void losesAtEachCutButNotAtTheEdge() {
        SheetPlan plan = plan(request("121 mm", "81 mm", "1 mm", piece("a", "60 mm", "40 mm", 4)));

        // 60 + 1 + 60 = 121 and 40 + 1 + 40 = 81
        assertThat(plan.bought()).isEqualTo(1);
        assertThat(plan.isProven()).isTrue();
        assertThat(plan.sheets().get(0).offcuts()).isEmpty();
        assertThat(plan.sheets().get(0).cuts()).hasSize(3);
        assertThat(plan.sheets().get(0).pieces()).extracting(p -> p.x() + ", " + p.y())
                .containsExactlyInAnyOrder("0 mm, 0 mm", "61 mm, 0 mm", "0 mm, 41 mm", "61 mm, 41 mm");
        assertThat(plan.reasons()).extracting(Sentence::toString).containsExactly(
                "4 rectangles are cut from 1 new sheet of 121 mm x 81 mm; each cut loses 1 mm.");
        assertThat(plan.proof()).isEqualTo("Proven least: no other cuts from edge to edge take fewer new sheets.");
    }

    @Test
    void turnsAPieceUnlessItsGrainSaysNot() {
        Rectangle along = new Rectangle("a", size("80 mm", "40 mm"), true, 1);

        assertThat(plan(request("50 mm", "100 mm", "0 mm", piece("a", "80 mm", "40 mm", 1))).sheets().get(0).pieces().get(0).size()).isEqualTo(size("40 mm", "80 mm"));
        assertThat(SheetPlanner.plan(request("50 mm", "100 mm", "0 mm", along))).isEqualTo(new NotCuttable(Sentence.of(
                "A rectangle for %s takes %s x %s, which lies on no sheet there is. Offer a larger one, or join pieces.", "“a”", q("80 mm"), q("40 mm"))));
    }

    @Test
    void usesWhatIsOnHandFirstAndKeepsOffcutsThatHoldAPiece() {
        SheetPlan plan = plan(new SheetCuttingRequest(List.of(piece("a", "60 mm", "40 mm", 3)), List.of(size("70 mm", "45 mm")),
                stock("150 mm", "100 mm"), q("1 mm"), piece("a", "60 mm", "40 mm", 1)));

        assertThat(plan.sheets()).extracting(CutSheet::bought).containsExactly(false, true);
        assertThat(plan.sheets().get(0).offcuts()).extracting(CutSheet.Offcut::kept).containsOnly(false);
        assertThat(plan.sheets().get(1).offcuts()).extracting(CutSheet.Offcut::kept).contains(true);
    }

    @Test
    void keepsNoOffcutThatWouldNeedTurningAcrossTheGrain() {
        Rectangle along = new Rectangle("a", size("80 mm", "40 mm"), true, 1);
        SheetPlan plan = plan(new SheetCuttingRequest(List.of(along), List.of(), stock("130 mm", "90 mm"), q("0 mm"), along));

        assertThat(plan.sheets().get(0).offcuts()).allSatisfy(o -> assertThat(o.kept()).isEqualTo(o.size().length().compareTo(q("80 mm")) >= 0));
        assertThat(plan.sheets().get(0).offcuts()).extracting(CutSheet.Offcut::kept).contains(true);
    }

    /** Four arms of 3 x 2 about an eye of 1 x 1 fill 5 x 5, but no cut from edge to edge parts them: an own example. */
    @Test
    void takesNoPinwheelThatShearsCannotCut() {
        SheetPlan plan = plan(request("5 cm", "5 cm", "0 mm", piece("arm", "3 cm", "2 cm", 4), piece("eye", "1 cm", "1 cm", 1)));

        assertThat(plan.bought()).isEqualTo(2);
        assertThat(plan.isProven()).isTrue();
    }

    static List<SheetCuttingRequest> generated() {
        Random random = new Random(31);
        return IntStream.range(0, 60).mapToObj(i -> {
            List<Rectangle> pieces = IntStream.rangeClosed(0, random.nextInt(4)).mapToObj(k -> new Rectangle("p" + k,
                    size(20 + random.nextInt(120) + " mm", 15 + random.nextInt(70) + " mm"), random.nextInt(3) == 0, 1 + random.nextInt(9))).toList();
            List<Extent> onHand = IntStream.range(0, random.nextInt(4)).mapToObj(k -> size(40 + random.nextInt(160) + " mm", 40 + random.nextInt(100) + " mm")).toList();
            List<SheetStock> stocks = random.nextBoolean() ? stock("300 mm", "200 mm")
                    : List.of(new SheetStock(size("300 mm", "200 mm"), new BigDecimal("9.80")), new SheetStock(size("150 mm", "200 mm"), new BigDecimal("5.60")));
            return new SheetCuttingRequest(pieces, onHand, stocks, q(random.nextInt(4) + " mm"), piece("keep", "30 mm", "30 mm", 1));
        }).toList();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void cutsEveryPieceOnceByCutsFromEdgeToEdge(SheetCuttingRequest request) {
        SheetPlan plan = plan(request);

        Map<String, Integer> cut = new TreeMap<>();
        for (CutSheet sheet : plan.sheets()) {
            SheetChecker.check(sheet, Micrometres.up(request.loss()));
            sheet.pieces().forEach(p -> cut.merge(p.label(), 1, Integer::sum));
            sheet.pieces().forEach(p -> assertThat(request.pieces()).anySatisfy(asked -> {
                assertThat(asked.label()).isEqualTo(p.label());
                assertThat(p.size().equals(asked.size()) || !asked.grain() && p.size().equals(new Extent(asked.size().width(), asked.size().length()))).isTrue();
            }));
        }
        assertThat(cut).isEqualTo(request.pieces().stream().collect(Collectors.toMap(Rectangle::label, Rectangle::count, Integer::sum, TreeMap::new)));
        List<Extent> left = new ArrayList<>(request.onHand());
        plan.sheets().stream().filter(s -> !s.bought()).forEach(s -> assertThat(left.remove(s.size())).isTrue());
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.cost());
    }

    static List<SheetCuttingRequest> small() {
        Random random = new Random(12);
        return IntStream.range(0, 80).mapToObj(i -> {
            List<Rectangle> pieces = IntStream.range(0, 3 + random.nextInt(4)).mapToObj(k -> new Rectangle("p" + k,
                    size(2 + random.nextInt(7) + " cm", 2 + random.nextInt(6) + " cm"), random.nextInt(4) == 0, 1)).toList();
            List<Extent> onHand = IntStream.range(0, random.nextInt(2)).mapToObj(k -> size(3 + random.nextInt(6) + " cm", 3 + random.nextInt(5) + " cm")).toList();
            return new SheetCuttingRequest(pieces, onHand, stock("10 cm", "9 cm"), q(random.nextInt(12) + " mm"), null);
        }).toList();
    }

    /** Every way of dividing the pieces among sheets, and of putting them together by cuts from edge to edge, is tried. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("small")
    void provesTheLeastThatTryingEverythingFinds(SheetCuttingRequest request) {
        SheetPlan plan = plan(request);

        assertThat(plan.isProven()).isTrue();
        assertThat(plan.bought()).isEqualTo(new EveryCutting(request).leastSheets());
    }

    /** More pieces never take fewer sheets, and a larger loss never does. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("small")
    void neverTakesFewerSheetsForMorePieces(SheetCuttingRequest request) {
        List<Rectangle> more = new ArrayList<>(request.pieces());
        more.add(piece("more", "3 cm", "3 cm", 2));

        assertThat(plan(new SheetCuttingRequest(more, request.onHand(), request.stocks(), request.loss(), null)).bought())
                .isGreaterThanOrEqualTo(plan(request).bought());
    }

    @Test
    void saysThatSheetsOnHandDoNotReach() {
        assertThat(SheetPlanner.plan(new SheetCuttingRequest(List.of(piece("a", "6 cm", "6 cm", 2)), List.of(size("8 cm", "8 cm")), List.of(), q("0 mm"), null)))
                .isInstanceOf(NotCuttable.class);
    }

    @Test
    void saysWhatIsCutFromWhatAndHowSureThatIs() {
        SheetPlan both = plan(new SheetCuttingRequest(List.of(piece("a", "60 mm", "40 mm", 3)), List.of(size("70 mm", "45 mm"), size("70 mm", "45 mm")),
                List.of(new SheetStock(size("70 mm", "45 mm"), BigDecimal.ONE), new SheetStock(size("150 mm", "45 mm"), BigDecimal.TEN)), q("1 mm"), null));
        assertThat(both.reasons()).extracting(Sentence::toString).containsExactly("3 rectangles are cut from 2 sheets on hand and 1 new sheet of 70 mm x 45 mm; each cut loses 1 mm.");
        assertThat(both.proof()).isEqualTo("Proven least: no other cuts from edge to edge cost less for new sheets, deliveries left aside.");
        assertThat(plan(request("70 mm", "45 mm", "1 mm", new Rectangle("a", size("60 mm", "40 mm"), true, 1))).proof())
                .isEqualTo("Proven least: no other cuts from edge to edge take fewer new sheets, all grain lying one way.");
    }

    /** The pinwheel again: its area is that of one sheet, and whoever may not look further knows no more. */
    @Test
    void saysHowMuchLessAnotherMightTakeWhereTheWorkIsSpent() {
        Work spent = Work.among(1);
        spent.spend(Long.MAX_VALUE);
        List<Rectangle> pinwheel = List.of(piece("arm", "3 cm", "2 cm", 4), piece("eye", "1 cm", "1 cm", 1));
        SheetPlan one = (SheetPlan) SheetPlanner.plan(new SheetCuttingRequest(pinwheel, List.of(), stock("5 cm", "5 cm"), q("0 mm"), null), spent);
        assertThat(one.bound()).isEqualByComparingTo("1");
        assertThat(one.proof()).isEqualTo("Best cutting found with 2 new sheets; fewer than 1 can't do.");
        SheetPlan two = (SheetPlan) SheetPlanner.plan(new SheetCuttingRequest(pinwheel, List.of(),
                List.of(new SheetStock(size("5 cm", "5 cm"), BigDecimal.ONE), new SheetStock(size("6 cm", "6 cm"), BigDecimal.TEN)), q("0 mm"), null), spent);
        assertThat(two.proof()).isEqualTo("Best cutting found; another might cost up to 1 less for new sheets.");
    }

    @Test
    void saysWhyNothingCanBeCut() {
        assertThat(refusal(new SheetCuttingRequest(List.of(piece("a", "6 cm", "4 cm", 1)), List.of(), List.of(), q("0 mm"), null)))
                .isEqualTo("There is no sheet to cut the rectangles for “a” from, of 60 mm x 40 mm each.");
        assertThat(refusal(new SheetCuttingRequest(List.of(piece("a", "6 cm", "6 cm", 2)), List.of(size("8 cm", "8 cm")), List.of(), q("0 mm"), null)))
                .isEqualTo("No way was found to cut all rectangles from the sheets on hand, and no new sheet is offered.");
        assertThat(refusal(request("8 cm", "8 cm", "0 mm", piece("a", "1 cm", "1 cm", 3001)))).startsWith("3001 pieces are more than a cutting plan can show, which are 3000.");
        assertThat(refusal(new SheetCuttingRequest(List.of(piece("a", "6 cm", "6 cm", 2)), List.of(size("31 m", "8 cm")), stock("1 m", "1 m"), q("0 mm"), null)))
                .isEqualTo("31 m x 80 mm is more than can be planned; a sheet has at most 30 m x 30 m.");
        assertThat(plan(request("30 m", "30 m", "0 mm", piece("a", "6 cm", "6 cm", 1))).bought()).isEqualTo(1);
    }

    private static String refusal(SheetCuttingRequest request) {
        return ((NotCuttable) SheetPlanner.plan(request)).reason().toString();
    }

    /** Three lie on a sheet in no way, so two sheets are worth the least there must be, and one is not; nor is one beside one planned where five are asked for. */
    @Test
    void tellsWhatIsEnough() {
        List<SheetStock> stock = stock("100 mm", "60 mm");
        StockFloor three = SheetPlanner.floor(new SheetCuttingRequest(List.of(piece("a", "60 mm", "40 mm", 3)), List.of(), stock, q("0 mm"), null), Work.among(1)).orElseThrow();
        assertThat(three.least()).isBetween(three.worths().get(0) + 1, 2 * three.worths().get(0));
        StockFloor five = SheetPlanner.floor(new SheetCuttingRequest(List.of(piece("a", "60 mm", "40 mm", 5)), List.of(),
                List.of(size("100 mm", "60 mm")), stock, q("0 mm"), null), Work.among(1)).orElseThrow();
        assertThat(five.worths()).hasSize(1);
        assertThat(five.least()).isBetween(2 * five.worths().get(0) + 1, 3 * five.worths().get(0));
    }

    static List<SheetCuttingRequest> few() {
        return small().subList(0, 15);
    }

    @ParameterizedTest
    @MethodSource("few")
    void provesTheLeastOfAFewThatTryingEverythingFinds(SheetCuttingRequest request) {
        SheetPlan plan = plan(request);

        assertThat(plan.isProven()).isTrue();
        assertThat(plan.bought()).isEqualTo(new EveryCutting(request).leastSheets());
        plan.sheets().forEach(sheet -> SheetChecker.check(sheet, Micrometres.up(request.loss())));
    }

    private static SheetPlan plan(SheetCuttingRequest request) {
        return (SheetPlan) SheetPlanner.plan(request);
    }

    private static SheetCuttingRequest request(String length, String width, String loss, Rectangle... pieces) {
        return new SheetCuttingRequest(List.of(pieces), List.of(), stock(length, width), q(loss), null);
    }

    private static List<SheetStock> stock(String length, String width) {
        return List.of(new SheetStock(size(length, width), BigDecimal.ONE));
    }

    private static Rectangle piece(String label, String length, String width, int count) {
        return new Rectangle(label, size(length, width), false, count);
    }

    private static Extent size(String length, String width) {
        return new Extent(q(length), q(width));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
