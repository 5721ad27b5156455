package benchful.core.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.needs.Take.Taker;
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

    private static Allowance percent(String percent) {
        return new Allowance.Percentage(new BigDecimal(percent));
    }
}
