package benchful.core.cutting.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans are written as "which length: pieces of each kind". */
class CuttingProofTest {
    private static final EqualLengths NEW = new EqualLengths(100, 7, EqualLengths.UNLIMITED, true);
    private static final Pattern BOTH = pattern(0, 1, 1);

    @Test
    void cutsEachPatternAsOftenAsIsCheapest() {
        CuttingProof.Answer answer = CuttingProof.ask(kinds(2, 2, NEW), List.of(pattern(0, 1, 0), BOTH, pattern(0, 0, 1)), Work.among(1));
        assertThat(written(answer)).containsExactly("0: [1, 1]", "0: [1, 1]");
        assertThat(answer.bound()).isEqualTo(14);
    }

    @Test
    void cutsNoPieceTooMany() {
        assertThat(written(CuttingProof.ask(kinds(2, 1, NEW), List.of(BOTH), Work.among(1)))).containsExactly("0: [1, 1]", "0: [1, 0]");
    }

    @Test
    void takesNoMoreLengthsThanThereAre() {
        CuttingProof.Answer answer = CuttingProof.ask(kinds(2, 2, new EqualLengths(100, 0, 1, false), NEW), List.of(BOTH, pattern(1, 1, 1)), Work.among(1));
        assertThat(written(answer)).containsExactly("0: [1, 1]", "1: [1, 1]");
        assertThat(answer.bound()).isEqualTo(7);
    }

    @Test
    void hasNoAnswerWherePatternsGiveNoneOrNoWorkIsLeft() {
        CuttingProof.Answer none = CuttingProof.ask(kinds(1, 1, NEW), List.of(pattern(0, 1, 0)), Work.among(1));
        assertThat(none.plan()).isEmpty();
        assertThat(none.bound()).isZero();
        assertThat(none.settled()).as("there is none").isTrue();
        CuttingProof.Answer spent = CuttingProof.ask(kinds(1, 1, NEW), List.of(BOTH), KnapsackTest.left(0));
        assertThat(spent.plan()).isEmpty();
        assertThat(spent.bound()).isZero();
        assertThat(spent.settled()).isFalse();
    }

    @Test
    void spendsAThousandStepsAPattern() {
        Work enough = KnapsackTest.left(2_001);
        CuttingProof.ask(kinds(1, 1, NEW), List.of(BOTH, BOTH), enough);
        assertThat(enough.isSpent()).isFalse();
        Work less = KnapsackTest.left(2_000);
        CuttingProof.ask(kinds(1, 1, NEW), List.of(BOTH, BOTH), less);
        assertThat(less.isSpent()).isTrue();
    }

    private static List<String> written(CuttingProof.Answer answer) {
        return answer.plan().orElseThrow().stream().map(p -> p.length() + ": " + Arrays.toString(p.counts())).toList();
    }

    private static Pattern pattern(int length, int... counts) {
        return new Pattern(length, counts);
    }

    /** So many pieces of 60 and of 40. */
    private static Kinds kinds(int long60, int short40, EqualLengths... lengths) {
        return new Kinds(new long[] {60, 40}, new int[] {long60, short40}, List.of(lengths));
    }
}
