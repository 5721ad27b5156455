package benchful.core.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be asked to be cut, and what a plan of it says of itself. */
class CuttingWordsTest {
    private static final Quantity NONE = q("0 mm");

    @Test
    void refusesAPieceWithoutALengthButNotNoneOfIt() {
        assertThat(new Piece("a", q("1 mm"), 0).count()).isZero();
        assertThatThrownBy(() -> new Piece("a", NONE, 1)).hasMessage("A piece for “a” must have a length, and its count can't be negative.");
        assertThatThrownBy(() -> new Piece("a", q("1 mm"), -1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Rectangle("a", size("1 mm", "1 mm"), false, 0).count()).isZero();
        assertThatThrownBy(() -> new Rectangle("a", size("1 mm", "1 mm"), false, -1)).hasMessage("The count of “a” can't be negative.");
    }

    @Test
    void takesStockFromNothingToTenMillion() {
        assertThat(new Stock(q("1 m"), BigDecimal.ZERO).cost()).isZero();
        assertThat(new Stock(q("1 m"), money("10000000")).cost()).isEqualTo("10000000");
        assertThatThrownBy(() -> new Stock(q("1 m"), money("10000000.01"))).hasMessage("A stock length costs from 0 to 10,000,000, but 10000000.01 is given.");
        assertThatThrownBy(() -> new Stock(q("1 m"), money("-0.01"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Stock(NONE, BigDecimal.ONE)).hasMessage("A stock length must be more than nothing.");
        assertThat(new SheetStock(size("1 m", "1 m"), BigDecimal.ZERO).cost()).isZero();
        assertThat(new SheetStock(size("1 m", "1 m"), money("10000000")).cost()).isEqualTo("10000000");
        assertThatThrownBy(() -> new SheetStock(size("1 m", "1 m"), money("10000001"))).hasMessage("A sheet costs from 0 to 10,000,000, but 10000001 is given.");
        assertThatThrownBy(() -> new SheetStock(size("1 m", "1 m"), money("-1"))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void leavesOutWhatThereIsNoneOf() {
        CuttingRequest lengths = new CuttingRequest(List.of(new Piece("none", q("1 m"), 0), new Piece("one", q("1 m"), 1)), List.of(NONE, q("2 m")), List.of(), NONE, NONE);
        assertThat(lengths.pieces()).extracting(Piece::label).containsExactly("one");
        assertThat(lengths.onHand()).containsExactly(q("2 m"));
        SheetCuttingRequest sheets = new SheetCuttingRequest(List.of(new Rectangle("none", size("1 m", "1 m"), false, 0), new Rectangle("one", size("1 m", "1 m"), false, 1)),
                List.of(), List.of(), NONE, null);
        assertThat(sheets.pieces()).extracting(Rectangle::label).containsExactly("one");
    }

    @Test
    void refusesCutsThatAdd() {
        assertThatThrownBy(() -> new CuttingRequest(List.of(), List.of(), List.of(), q("-1 mm"), NONE))
                .hasMessage("The loss at a cut and the shortest offcut kept can't be negative.");
        assertThatThrownBy(() -> new CuttingRequest(List.of(), List.of(), List.of(), NONE, q("-1 mm"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SheetCuttingRequest(List.of(), List.of(), List.of(), q("-1 mm"), null)).hasMessage("The loss at a cut can't be negative.");
    }

    @Test
    void turnsARectangleUnlessItsGrainForbids() {
        Rectangle turned = new Rectangle("a", size("80 mm", "40 mm"), false, 1);
        Rectangle along = new Rectangle("a", size("80 mm", "40 mm"), true, 1);
        assertThat(turned.liesOn(size("40 mm", "80 mm"))).isTrue();
        assertThat(along.liesOn(size("40 mm", "80 mm"))).isFalse();
        assertThat(along.liesOn(size("80 mm", "40 mm"))).isTrue();
        assertThat(along.liesOn(size("79.9 mm", "40 mm"))).isFalse();
        assertThat(along.liesOn(size("80 mm", "39.9 mm"))).isFalse();
    }

    @Test
    void countsWhatIsBoughtAndKnowsWhetherItIsProven() {
        CuttingPlan lengths = new CuttingPlan(List.of(length(false), length(true), length(true)), money("2.0"), money("2"), "proof", List.of());
        assertThat(lengths.bought()).isEqualTo(2);
        assertThat(lengths.isProven()).isTrue();
        assertThat(new CuttingPlan(List.of(), money("2"), money("1"), "proof", List.of()).isProven()).isFalse();
        assertThatThrownBy(() -> new CuttingPlan(List.of(), money("2"), money("3"), "proof", List.of())).hasMessage("The bound 3 lies above the cost 2.");
        SheetPlan sheets = new SheetPlan(List.of(sheet(false), sheet(true), sheet(true)), money("2.0"), money("2"), "proof", List.of());
        assertThat(sheets.bought()).isEqualTo(2);
        assertThat(sheets.isProven()).isTrue();
        assertThat(new SheetPlan(List.of(), money("2"), money("1"), "proof", List.of()).isProven()).isFalse();
        assertThatThrownBy(() -> new SheetPlan(List.of(), money("2"), money("3"), "proof", List.of())).hasMessage("The bound 3 lies above the cost 2.");
    }

    /** Among all purchases it may cost more than it would alone; a bound never lies above what it is the bound of. */
    @Test
    void isWeighedAmongPurchasesAtAnotherCost() {
        CuttingPlan lengths = new CuttingPlan(List.of(length(true)), money("2"), money("2"), "proof", List.of()).amongPurchases(money("3"), money("4"));
        assertThat(lengths).isEqualTo(new CuttingPlan(List.of(length(true)), money("3"), money("3"),
                "Which lengths to buy is weighed with all other purchases and their deliveries; how sure that is stands with the total.", List.of()));
        SheetPlan sheets = new SheetPlan(List.of(sheet(true)), money("2"), money("2"), "proof", List.of()).amongPurchases(money("3"), money("4"));
        assertThat(sheets).isEqualTo(new SheetPlan(List.of(sheet(true)), money("3"), money("3"),
                "Which sheets to buy is weighed with all other purchases and their deliveries; how sure that is stands with the total.", List.of()));
    }

    @Test
    void claimsOfARollNoMoreThanItsAreaProves() {
        SheetPlan sheets = new SheetPlan(List.of(sheet(true)), money("2"), money("2"), "proof", List.of());
        assertThat(sheets.offARoll(money("2")).proof()).isEqualTo("Proven least: no smaller area holds all pieces.");
        assertThat(sheets.offARoll(money("3")).bound()).isEqualTo("2");
        SheetPlan loose = sheets.offARoll(money("1.5"));
        assertThat(loose.proof()).isEqualTo("Lengths off the roll were tried in turn; a shorter one might do.");
        assertThat(loose.bound()).isEqualTo("1.5");
        assertThat(loose.cost()).isEqualTo("2");
        assertThat(loose.sheets()).isEqualTo(sheets.sheets());
    }

    @Test
    void showsAsManyPiecesAsAPlanCan() {
        assertThat(NotCuttable.ifMore(10, 10)).isEmpty();
        assertThat(NotCuttable.ifMore(11, 10)).hasValueSatisfying(none -> assertThat(none.reason()).hasToString(
                "11 pieces are more than a cutting plan can show, which are 10. Give the amount for all pieces together and leave their number out."));
    }

    private static CutLength length(boolean bought) {
        return new CutLength(q("1 m"), bought, List.of(), q("1 m"), false);
    }

    private static CutSheet sheet(boolean bought) {
        return new CutSheet(size("1 m", "1 m"), bought, List.of(), List.of(), List.of());
    }

    private static Extent size(String length, String width) {
        return new Extent(q(length), q(width));
    }

    private static BigDecimal money(String written) {
        return new BigDecimal(written);
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
