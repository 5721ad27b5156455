package benchful.plans.materials.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.buying.Assortment.Floor;
import benchful.core.buying.Assortment.Rule;
import benchful.core.buying.LeadTime;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Supplier;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What is known of mixes that are enough, and which lengths off a roll are worth buying. */
class MixRulesTest {
    private static final MixRules TWO = new MixRules(List.of(30L, 50L), 5);

    @Test
    void aPlanFromSomeSizesBoundsTheirCostUnlessAnotherIsTaken() {
        assertThat(TWO.of(List.of(0), Optional.of(100L))).isEqualTo(rule(floor(100, 30, 0), floor(1, 0, 1)));
        assertThat(TWO.of(List.of(0), Optional.empty())).isEqualTo(rule(floor(1, 0, 1)));
        assertThat(TWO.of(List.of(0, 1), Optional.of(100L))).isEqualTo(rule(floor(100, 30, 50)));
        assertThat(TWO.of(List.of(0, 1), Optional.empty())).isEqualTo(rule());
    }

    /** Beside one at 30 and two at 50 at least 60 more: two more at 30, two more at 50, or both. */
    @Test
    void leavesOutAMixThatIsTooLittle() {
        assertThat(TWO.beyond(List.of(1, 2), 60)).isEqualTo(rule(floor(30 + 60, 30, 0), floor(100 + 100, 0, 50), floor(130 + 60, 30, 50)));
        assertThat(TWO.beyond(List.of(5, 2), 60)).isEqualTo(rule(floor(100 + 100, 0, 50)));
    }

    @Test
    void asksForOneMoreOfAnyWhereThereAreMany() {
        MixRules five = new MixRules(List.of(1L, 2L, 3L, 4L, 5L), 9);
        assertThat(five.beyond(List.of(0, 0, 1, 0, 0), 60)).isEqualTo(rule(floor(1, 1, 0, 0, 0, 0), floor(2, 0, 2, 0, 0, 0),
                floor(3 + 3, 0, 0, 3, 0, 0), floor(4, 0, 0, 0, 4, 0), floor(5, 0, 0, 0, 0, 5)));
    }

    @Test
    void knowsWhichMixLiesBelowAFloor() {
        assertThat(MixRules.isBelow(List.of(1, 2), floor(130, 30, 50))).isFalse();
        assertThat(MixRules.isBelow(List.of(1, 2), floor(131, 30, 50))).isTrue();
    }

    private static Rule rule(Floor... floors) {
        return new Rule(List.of(floors));
    }

    private static Floor floor(long least, Integer... weights) {
        return new Floor(Stream.of(weights).map(Long::valueOf).toList(), least);
    }

    /** Off a roll 140 cm wide by 10 cm: two rows of 40 cm at the most, at the least what the area takes, 68.6 cm. Along the grain two rows of 60. */
    @Test
    void buysFromTheAreaToRowsOfPieces() {
        assertThat(lengths("0.1 m", "0 m", 0, cut("60 cm", "40 cm", false, 4))).containsExactly("0.8 m for 9.60", "0.7 m for 8.40");
        assertThat(lengths("0.1 m", "0 m", 0, cut("40 cm", "60 cm", false, 4))).containsExactly("0.8 m for 9.60", "0.7 m for 8.40");
        assertThat(lengths("0.1 m", "0 m", 0, cut("60 cm", "40 cm", true, 4))).hasSize(6).startsWith("1.2 m for 14.40").endsWith("0.7 m for 8.40");
        assertThat(lengths("0.1 m", "0.4 m", 0, cut("60 cm", "40 cm", false, 4))).startsWith("0.8 m for 9.60").endsWith("0.3 m for 3.60");
        assertThat(lengths("0.1 m", "9 m", 0, cut("60 cm", "40 cm", false, 4))).startsWith("0.8 m for 9.60").endsWith("0.1 m for 1.20");
    }

    /** A cut of 5 mm between the rows takes another step; two of 70 cm and a cut are wider than the roll. */
    @Test
    void losesAtEachCut() {
        assertThat(lengths("0.1 m", "0 m", 5_000, cut("60 cm", "40 cm", false, 4))).startsWith("0.9 m for 10.80");
        assertThat(lengths("0.1 m", "0 m", 0, cut("70 cm", "40 cm", false, 4))).startsWith("0.8 m for 9.60");
        assertThat(lengths("0.1 m", "0 m", 5_000, cut("70 cm", "40 cm", false, 4))).startsWith("1.7 m for 20.40");
        assertThat(lengths("0.1 m", "0 m", 5_000, cut("69.75 cm", "40 cm", false, 4))).startsWith("0.9 m for 10.80");
    }

    /** Beside the deep ones lie the shallow: one of 60 x 50 leaves 90 cm for two of 40 x 30, and the third takes a row of its own. */
    @Test
    void laysTheDeepestFirst() {
        assertThat(lengths("0.1 m", "0 m", 0, cut("40 cm", "30 cm", false, 3), cut("50 cm", "60 cm", true, 1))).startsWith("0.8 m for 9.60");
        assertThat(lengths("0.1 m", "0 m", 0, cut("40 cm", "30 cm", false, 2), cut("50 cm", "60 cm", true, 1))).startsWith("0.5 m for 6.00");
    }

    /** What is too wide is left out; what is longer than the roll is wide lies along it. */
    @Test
    void takesWhatFits() {
        assertThat(lengths("0.1 m", "9 m", 0, cut("160 cm", "150 cm", false, 1))).containsExactly("0.1 m for 1.20");
        assertThat(lengths("0.1 m", "0 m", 0, cut("160 cm", "20 cm", false, 1))).startsWith("1.6 m for 19.20");
        assertThat(lengths("0.1 m", "0 m", 0, cut("20 cm", "140 cm", true, 1))).startsWith("0.2 m for 2.40");
        assertThat(lengths("0.1 m", "9 m", 0, cut("20 cm", "141 cm", true, 1))).containsExactly("0.1 m for 1.20");
    }

    /** By the centimetre 960 at the most and 823 at the least: every sixth is tried. By the metre, no more than 30 m. */
    @Test
    void triesNoMoreThanSome() {
        assertThat(lengths("0.01 m", "0 m", 0, cut("60 cm", "40 cm", false, 48))).hasSize(23).startsWith("9.6 m for 115.20").endsWith("8.28 m for 99.36");
        assertThat(lengths("1 m", "0 m", 0, cut("140 cm", "1 m", true, 40))).containsExactly("30 m for 360.00");
    }

    @Test
    void leavesSheetsAsTheyAre() {
        StockCutter.Offer<Extent> sheet = new StockCutter.Offer<>(new Extent(q("1 m"), q("1 m")), q("1 m2"), new PackOffer(MILL, q("1 m2"), BigMoney.parse("GBP 3"), List.of()));
        assertThat(RollLengths.isRoll(sheet)).isFalse();
        assertThat(new RollLengths(need(cut("60 cm", "40 cm", false, 4)), q("0 m2"), 0).of(List.of(sheet))).containsExactly(sheet);
    }

    private static final Supplier MILL = new Supplier("Mill", Money.parse("GBP 0"), Money.parse("GBP 0"), null, new LeadTime(0, false), BigDecimal.ZERO);
    private static final Unit ROLL = Unit.parse("m x 140 cm").orElseThrow();

    /** At 0.012 for a millimetre. */
    private static List<String> lengths(String step, String onHand, long loss, CutNeed... cuts) {
        Quantity holds = q(step).sized(ROLL);
        StockCutter.Offer<Extent> offer = new StockCutter.Offer<>(new Extent(q(step), q("140 cm")), holds,
                new PackOffer(MILL, holds, BigMoney.parse("GBP 0.012").multipliedBy(q(step).base()), List.of()));
        return new RollLengths(need(cuts), q(onHand).sized(ROLL), loss).of(List.of(offer)).stream()
                .map(one -> one.size().length().in(Unit.M) + " for " + one.pack().price().getAmount().setScale(2)).toList();
    }

    private static Need need(CutNeed... cuts) {
        Quantity total = Stream.of(cuts).map(CutNeed::amount).reduce(Quantity::plus).orElseThrow();
        return new Need("Cloth", total, Quantity.zero(Unit.CM2), total, List.of(cuts), List.of());
    }

    private static CutNeed cut(String length, String width, boolean grain, int count) {
        return new CutNeed("one", new Extent(q(length), q(width)), grain, count);
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
