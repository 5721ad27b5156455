package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KNOWN = List.of("epoxy", "nickel", "sharp-tools", "sharp-edges", "hot-wax");

    @ParameterizedTest
    @CsvSource({"epoxi, epoxy", "exopy, epoxy", "epoxyy, epoxy", "sharp-tool, sharp-tools", "sharptools, sharp-tools", "nikel, nickel"})
    void namesWhatWasProbablyMeant(String written, String meant) {
        assertThat(Nearest.to(written, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"soldering-fume", "wax", "e", "no-such-thing"})
    void guessesNothingWhereNoneIsNear(String written) {
        assertThat(Nearest.to(written, KNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "'', abc, 3", "same, same, 0"})
    void countsSlips(String a, String b, int slips) {
        assertThat(Nearest.slips(a, b)).isEqualTo(slips);
    }

    @Test
    void isSymmetricAndNoneForTheSameWord() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            String a = word(random);
            String b = word(random);
            assertThat(Nearest.slips(a, b)).isEqualTo(Nearest.slips(b, a)).isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
            assertThat(Nearest.slips(a, a)).isZero();
        }
    }

    private static String word(Random random) {
        return random.ints(random.nextInt(8), 'a', 'd').collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }
}
