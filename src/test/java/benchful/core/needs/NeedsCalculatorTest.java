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
import java.util.stream.Stream;
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
        Need untaken = NeedsCalculator.need(new NeedRequest("Copper", Unit.CM2, List.of(new NeedLine(
                List.of(narrow, rectangle(0, "90 mm", "90 mm", true)), null, percent("25")))));
        assertThat(untaken.cuts()).containsExactly(new CutNeed("medium", extent("60 mm", "40 mm"), true, 3), new CutNeed("reserve", extent("60 mm", "40 mm"), true, 1));
        assertThat(NeedsCalculator.need(new NeedRequest("Copper", Unit.CM2, List.of(new NeedLine(List.of(narrow), null, Allowance.none())))).cuts()).hasSize(1);
    }

    /** Of seven pieces of two lengths a tenth is one, of the longest that anybody takes; whoever takes none asks for no spare. */
    @Test
    void sparesPiecesOnlyOfLengthsThatAreTaken() {
        Need need = NeedsCalculator.need(new NeedRequest("Wire", Unit.CM, List.of(new NeedLine(List.of(
                take(Taker.STUDENT, 3, "30 cm", 2), take(Taker.SPARE, 1, "20 cm", 1), take(Taker.STUDENT, 0, "90 cm", 2), take(Taker.DEMONSTRATION, 1, "80 cm", 0)),
                null, percent("10")))));

        assertThat(need.cuts()).containsExactly(new CutNeed("medium", Quantity.parse("30 cm"), 6), new CutNeed("spare kit", Quantity.parse("20 cm"), 1),
                new CutNeed("reserve", Quantity.parse("30 cm"), 1));
        assertThat(need.net()).isEqualTo(Quantity.parse("200 cm"));
        assertThat(need.waste()).isEqualTo(Quantity.parse("30 cm"));
        assertThat(need.reasons()).extracting(Sentence::toString).containsExactly("3 students in size “medium” take 2 pieces of 300 mm each: 1.8 m in all.",
                "1 spare kit in size “medium” takes 1 piece of 200 mm.", "10 % of 7 pieces is added for waste, rounded up.", "These are 1 piece of the longest, 300 mm.");
    }

    /** Of 4 pieces, each of which spoils once in ten, all stay good with 0.656; of 5 four with 0.919, of 6 with 0.984. */
    @Test
    void bringsEnoughPiecesThatAllFinishWithTheChanceAsked() {
        Need need = NeedsCalculator.need(new NeedRequest("Wire", Unit.CM, List.of(new NeedLine(
                List.of(take(Taker.STUDENT, 4, "30 cm", 1)), null, confidence("10", "0.95")))));

        assertThat(need.cuts()).containsExactly(new CutNeed("medium", Quantity.parse("30 cm"), 4), new CutNeed("reserve", Quantity.parse("30 cm"), 2));
        assertThat(need.total()).isEqualTo(Quantity.parse("180 cm"));
        assertThat(need.reasons()).extracting(Sentence::toString)
                .contains("Of 6 brought, 4 stay good with a chance of 0.984; 0.95 was asked. Each spoils with a chance of 10 %.");
    }

    /** Of what is poured no piece can spoil, so the percentage is added. */
    @Test
    void addsThePercentageWhereNothingIsCounted() {
        Need need = NeedsCalculator.need(new NeedRequest("Resin", Unit.ML, List.of(new NeedLine(
                List.of(take(Taker.STUDENT, 4, "5 ml", null)), null, confidence("10", "0.95")))));

        assertThat(need.total()).isEqualTo(Quantity.parse("22 ml"));
    }

    @Test
    void saysWhoTakesWhat() {
        Need need = NeedsCalculator.need(new NeedRequest("Silk", Unit.M, List.of(
                new NeedLine(List.of(new Take(Taker.STUDENT, "small", 1, Quantity.parse("2 m"), null), new Take(Taker.DEMONSTRATION, null, 1, Quantity.parse("2 m"), null),
                        new Take(Taker.DEMONSTRATION, null, 2, Quantity.parse("2 m"), null), new Take(Taker.SHARED, null, 1, Quantity.parse("3 m"), null)), null, Allowance.none()))));

        assertThat(need.reasons()).extracting(Sentence::toString).containsExactly("1 student in size “small” takes 2 m.",
                "The demonstration piece takes 2 m.", "2 demonstration pieces take 2 m each: 4 m in all.", "The whole class takes 3 m.");
        assertThat(need.waste()).isEqualTo(Quantity.parse("0 m"));
    }

    @Test
    void namesCutPiecesByWhomTheyAreFor() {
        List<Take> takes = Stream.of(Taker.values()).map(taker -> new Take(taker, null, 1, Quantity.parse("2 cm"), 1)).toList();
        Need need = NeedsCalculator.need(new NeedRequest("Wire", Unit.CM, List.of(new NeedLine(takes, null, Allowance.none()))));

        assertThat(need.cuts()).extracting(CutNeed::label).containsExactly("student", "demonstration", "spare kit", "bench");
        assertThat(need.reasons()).extracting(Sentence::toString).containsExactly("1 student takes 1 piece of 20 mm.",
                "The demonstration piece takes 1 piece of 20 mm.", "1 spare kit takes 1 piece of 20 mm.", "The whole class takes 1 piece of 20 mm.");
        assertThat(need.cuts().get(0).labelled("ring")).isEqualTo(new CutNeed("ring", Quantity.parse("2 cm"), 1));
        assertThat(new CutNeed("ring", Quantity.parse("2 cm"), 3).amount()).isEqualTo(Quantity.parse("6 cm"));
        assertThat(new CutNeed("leaf", extent("2 cm", "3 cm"), false, 3).amount()).isEqualTo(Quantity.parse("18 cm2"));
    }

    /** Feet divided by three never end; what is packed is what a person can measure, and the need is the sum of it. */
    @Test
    void needsWhatThePackedKitsAddUpTo() {
        Quantity third = new Quantity(new BigDecimal("1.3333333333333333333"), Unit.FOOT);
        Take take = new Take(Taker.STUDENT, "medium", 3, third, 2);
        assertThat(take.perKit()).isEqualTo(Quantity.of("2.66667", Unit.FOOT));
        assertThat(take.amount()).isEqualTo(Quantity.of("8.00001", Unit.FOOT));
    }

    @Test
    void refusesWhatIsNeitherOneNorTheOther() {
        Take plain = take(Taker.STUDENT, 1, "2 m", null);
        assertThatThrownBy(() -> new NeedLine(List.of(plain), Quantity.parse("2 m"), Allowance.none())).hasMessage("A line is either shared or taken by each student.");
        assertThatThrownBy(() -> new NeedLine(List.of(plain, take(Taker.STUDENT, 1, "2 m", 1)), null, Allowance.none())).hasMessage("A line is either cut to pieces or not.");
        assertThatThrownBy(() -> new NeedRequest("Silk", Unit.G, List.of(new NeedLine(List.of(plain), null, Allowance.none())))).hasMessageContaining("can't be given in g");
        assertThatThrownBy(() -> new NeedRequest("Silk", Unit.G, List.of(new NeedLine(List.of(), Quantity.parse("2 m"), Allowance.none())))).hasMessageContaining("can't be given in g");
        assertThatThrownBy(() -> take(Taker.STUDENT, -1, "2 m", null)).hasMessageContaining("can be negative");
        assertThatThrownBy(() -> take(Taker.STUDENT, 1, "-2 m", null)).hasMessageContaining("can be negative");
        assertThatThrownBy(() -> take(Taker.STUDENT, 1, "2 m", -1)).hasMessageContaining("can be negative");
    }

    @Test
    void refusesChancesThatLeadNowhere() {
        assertThat(percent("0")).isEqualTo(Allowance.none());
        assertThatThrownBy(() -> percent("-1")).hasMessage("A waste percentage must be from 0 to below 100, but is -1.");
        assertThatThrownBy(() -> confidence("100", "0.5")).hasMessage("A waste percentage must be from 0 to below 100, but is 100.");
        assertThatThrownBy(() -> confidence("10", "0")).hasMessage("A confidence must lie above 0 and below 1, but is 0.");
        assertThatThrownBy(() -> Spoilage.bring(-1, 0.1, 0.5)).hasMessage("No number brings -1 good ones where each spoils with chance 0.1, at confidence 0.5.");
        assertThatThrownBy(() -> Spoilage.bring(1, -0.1, 0.5)).hasMessageStartingWith("No number");
        assertThatThrownBy(() -> Spoilage.bring(1, 1, 0.5)).hasMessageStartingWith("No number");
        assertThatThrownBy(() -> Spoilage.bring(1, 0.1, 0)).hasMessageStartingWith("No number");
        assertThatThrownBy(() -> Spoilage.bring(1, 0.1, 1)).hasMessageStartingWith("No number");
        assertThatThrownBy(() -> Spoilage.bring(9_000_000, 0.9, 0.5)).hasMessage("More than 10000000 would have to be brought. Lower the chance of spoiling.");
    }

    @Test
    void bringsNoneWhereNoneIsNeededAndNoMoreWhereNothingSpoils() {
        assertThat(Spoilage.bring(0, 0.5, 0.9)).isZero();
        assertThat(Spoilage.bring(7, 0, 0.9)).isEqualTo(7);
        assertThat(Spoilage.bring(1, 0.9, 0.5)).isEqualTo(7); // 1 - 0.9^7 = 0.522, 1 - 0.9^6 = 0.469
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

    private static Allowance confidence(String spoils, String asked) {
        return new Allowance.Confidence(new BigDecimal(spoils), new BigDecimal(asked));
    }

    private static Allowance percent(String percent) {
        return new Allowance.Percentage(new BigDecimal(percent));
    }
}
