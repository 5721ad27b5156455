package benchful.core.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.needs.Take.Taker;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class NeedsCalculatorTest {
    @Test
    void addsUpSizesDemonstrationSparesAndWaste() {
        Need need = NeedsCalculator.need(new NeedRequest("Silk", Unit.M, List.of(new NeedLine(List.of(
                take(Taker.STUDENT, 8, "1.5 m", null), take(Taker.DEMONSTRATION, 1, "1.5 m", null), take(Taker.SPARE, 2, "150 cm", null)),
                null, percent("10")))));

        assertThat(need.net()).isEqualTo(Quantity.parse("16.5 m"));
        assertThat(need.total()).isEqualTo(Quantity.parse("18.15 m"));
    }

    @Test
    void roundsCountedMaterialsUpOnceForTheWholeClass() {
        Need need = NeedsCalculator.need(new NeedRequest("Paper", Unit.PIECE, List.of(
                new NeedLine(List.of(take(Taker.STUDENT, 5, "0.5", null)), null, Allowance.none()),
                new NeedLine(List.of(take(Taker.STUDENT, 5, "0.5", null)), null, Allowance.none()))));

        assertThat(need.total()).isEqualTo(Quantity.parse("5"));
    }

    @Test
    void keepsCutPiecesAndAddsSparesOfTheLongest() {
        Need need = NeedsCalculator.need(new NeedRequest("Wire", Unit.CM, List.of(new NeedLine(List.of(
                take(Taker.STUDENT, 8, "30 cm", 2), take(Taker.STUDENT, 2, "40 cm", 2)), null, percent("10")))));

        assertThat(need.cuts()).containsExactly(new CutNeed("medium", Quantity.parse("30 cm"), 16),
                new CutNeed("medium", Quantity.parse("40 cm"), 4), new CutNeed("reserve", Quantity.parse("40 cm"), 2));
        assertThat(need.total()).isEqualTo(Quantity.parse("720 cm"));
    }

    @Test
    void addsTheWasteOfWhatServesAll() {
        Need need = NeedsCalculator.need(new NeedRequest("Glue", Unit.ML, List.of(new NeedLine(List.of(), Quantity.parse("10 ml"), percent("20")))));

        assertThat(need).isEqualTo(new Need("Glue", Quantity.parse("10 ml"), Quantity.parse("2 ml"), Quantity.parse("12 ml"), List.of(), need.reasons()));
        assertThat(need.reasons()).extracting(Sentence::toString).containsExactly("10 ml serve the whole class.", "20 % is added for waste: 2 ml.");
    }

    /** 42 and a tenth are 46.2, of which 47 are brought: 5 of them beyond what is used. */
    @Test
    void countsAsWasteAllThatIsBroughtBeyondWhatIsUsed() {
        Need need = NeedsCalculator.need(new NeedRequest("Bead", Unit.PIECE, List.of(
                new NeedLine(List.of(take(Taker.STUDENT, 7, "6", null)), null, percent("10")))));

        assertThat(need.net()).isEqualTo(Quantity.parse("42"));
        assertThat(need.waste()).isEqualTo(Quantity.parse("5"));
        assertThat(need.total()).isEqualTo(Quantity.parse("47"));
        assertThat(need.reasons()).extracting(Sentence::toString).containsExactly("7 students in size “medium” take 6 pcs each: 42 pcs in all.",
                "10 % is added for waste: 4.2 pcs.", "46.2 pcs is rounded up to 47 pcs.");
    }

    /** One piece is the longer, the other the wider; without a grain both are laid along their longer edge first. */
    @Test
    void makesSpareRectanglesLargeEnoughForAnybody() {
        Take narrow = rectangle(3, "60 mm", "40 mm", true);
        Take wide = rectangle(1, "45 mm", "50 mm", true);
        Need grained = NeedsCalculator.need(new NeedRequest("Copper", Unit.CM2, List.of(new NeedLine(List.of(narrow, wide), null, percent("25")))));

        assertThat(grained.cuts()).containsExactly(
                new CutNeed("medium", extent("60 mm", "40 mm"), true, 3), new CutNeed("medium", extent("45 mm", "50 mm"), true, 1),
                new CutNeed("reserve", extent("60 mm", "50 mm"), true, 1));
        assertThat(grained.net()).isEqualTo(Quantity.parse("94.5 cm2"));
        assertThat(grained.waste()).isEqualTo(Quantity.parse("30 cm2"));
        assertThat(grained.reasons()).extracting(Sentence::toString).containsExactly(
                "3 students in size “medium” take 1 piece of 60 mm x 40 mm (2400 mm2) each: 7200 mm2 in all.",
                "1 student in size “medium” takes 1 piece of 45 mm x 50 mm (2250 mm2).",
                "25 % of 4 pieces is added for waste, rounded up.", "These are 1 piece of 60 mm x 50 mm, large enough for anybody.");
        Need free = NeedsCalculator.need(new NeedRequest("Copper", Unit.CM2, List.of(new NeedLine(
                List.of(rectangle(3, "60 mm", "40 mm", false), rectangle(1, "45 mm", "50 mm", false)), null, percent("25")))));
        assertThat(free.cuts().get(2)).isEqualTo(new CutNeed("reserve", extent("60 mm", "45 mm"), false, 1));
    }

    @Test
    void bringsEnoughThatAllFinishWithTheChanceAsked() {
        Need need = NeedsCalculator.need(new NeedRequest("Crystal", Unit.PIECE, List.of(new NeedLine(
                List.of(take(Taker.STUDENT, 10, "2", null)), null, new Allowance.Confidence(new BigDecimal("10"), new BigDecimal("0.95"))))));

        // of 24 at most 4 may spoil: .915; of 25 at most 5: .967
        assertThat(need.total()).isEqualTo(Quantity.parse("25"));
        assertThat(need.reasons()).extracting(Sentence::toString)
                .contains("Of 25 brought, 20 stay good with a chance of 0.967; 0.95 was asked. Each spoils with a chance of 10 %.");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/binomial-quantiles.csv", useHeadersInDisplayName = true)
    void usesABinomialThatAgreesWithOthers(int trials, double chance, double probability, int quantile) {
        assertThat(BinomialDistribution.of(trials, chance).inverseCumulativeProbability(probability)).isEqualTo(quantile);
    }

    /** Against the sum of binomial terms. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void fewerWouldNotBeEnough(long seed) {
        Random random = new Random(seed);
        int needed = 1 + random.nextInt(40);
        double spoils = random.nextDouble() * 0.4;
        double confidence = 0.5 + random.nextDouble() * 0.49;
        int bring = Spoilage.bring(needed, spoils, confidence);

        assertThat(good(needed, bring, spoils)).isGreaterThanOrEqualTo(confidence);
        assertThat(bring == needed ? 0 : good(needed, bring - 1, spoils)).isLessThan(confidence);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void moreStudentsNeverNeedLess(long seed) {
        Random random = new Random(seed);
        Allowance allowance = random.nextBoolean() ? percent(random.nextInt(40) + "")
                : new Allowance.Confidence(BigDecimal.valueOf(random.nextInt(30)), new BigDecimal("0.9"));
        Integer pieces = random.nextBoolean() ? null : 1 + random.nextInt(3);
        Unit unit = pieces == null ? Unit.PIECE : Unit.MM;
        Quantity before = Quantity.zero(unit);
        for (int students = 0; students < 60; students++) {
            Quantity each = Quantity.of(7, unit);
            Quantity total = NeedsCalculator.need(new NeedRequest("x", unit, List.of(
                    new NeedLine(List.of(new Take(Taker.STUDENT, "medium", students, each, pieces)), null, allowance)))).total();
            assertThat(total).isGreaterThanOrEqualTo(before);
            before = total;
        }
    }

    @Test
    void refusesWasteThatLeavesNothing() {
        assertThatThrownBy(() -> percent("100")).hasMessage("A waste percentage must be from 0 to below 100, but is 100.");
        assertThatThrownBy(() -> new Allowance.Confidence(BigDecimal.ONE, BigDecimal.ONE)).hasMessageContaining("above 0 and below 1");
    }

    private static double good(int needed, int brought, double spoils) {
        double sum = 0;
        double term = Math.pow(1 - spoils, brought);
        for (int spoilt = 0; spoilt <= brought - needed; spoilt++) {
            sum += term;
            term *= (double) (brought - spoilt) / (spoilt + 1) * spoils / (1 - spoils);
        }
        return sum;
    }

    private static Take take(Taker taker, int kits, String each, Integer pieces) {
        return new Take(taker, "medium", kits, Quantity.parse(each), pieces);
    }

    private static Take rectangle(int kits, String length, String width, boolean grain) {
        return new Take(Taker.STUDENT, "medium", kits, extent(length, width).area(), 1, extent(length, width), grain);
    }

    private static Extent extent(String length, String width) {
        return new Extent(Quantity.parse(length), Quantity.parse(width));
    }

    private static Allowance percent(String percent) {
        return new Allowance.Percentage(new BigDecimal(percent));
    }
}
