package benchful.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StrandSizerTest {
    private static final Knots KNOTTED = Knots.tight(Quantity.parse("0.6 mm"), true, 2);

    @Test
    void findsTheKnottedStrandNearestToItsLength() {
        Strand strand = StrandSizer.size(strand("42 cm", "25 mm", Arrangement.REPEATED, KNOTTED, null, run("pearl", "8 mm", 1)));

        // 25 + 43 x 8 + 42 x 1.2 = 419.4; one more would be 428.6
        assertThat(strand.counts()).isEqualTo(Map.of("pearl", 43));
        assertThat(strand.knots()).isEqualTo(44);
        assertThat(strand.length()).isEqualTo(Quantity.parse("419.4 mm"));
        assertThat(strand.difference()).isEqualTo(Quantity.parse("-0.6 mm"));
        // 43 x 8 of beads and 44 knots of 6.06
        assertThat(strand.thread()).isEqualTo(Quantity.parse("610.64 mm"));
        assertThat(strand.reasons()).extracting(Sentence::toString).containsExactly(
                "43 beads and 44 knots with the closure make 419.4 mm, 0.6 mm shorter than the 420 mm asked for.",
                "1 bead fewer would make 410.2 mm.",
                "1 bead more would make 428.6 mm.",
                "Each knot adds 1.2 mm along the strand and takes 6.1 mm of cord.");
    }

    @Test
    void placesBeadsWithTheKnotsBetweenThem() {
        Strand strand = StrandSizer.size(strand("20 mm", "0 mm", Arrangement.REPEATED, KNOTTED, null, run("a", "4 mm", 1), run("b", "6 mm", 1)));

        assertThat(strand.beads()).containsExactly(
                placed("a", "0 mm", "4 mm"), placed("b", "5.2 mm", "6 mm"), placed("a", "12.4 mm", "4 mm"), placed("b", "17.6 mm", "6 mm"));
    }

    @Test
    void mirrorsAPatternAboutTheCentre() {
        Strand strand = StrandSizer.size(strand("35 mm", "0 mm", Arrangement.MIRRORED, Knots.none(), null, run("a", "5 mm", 2), run("b", "5 mm", 1)));

        assertThat(strand.beads()).extracting(PlacedBead::bead).containsExactly("a", "a", "b", "a", "b", "a", "a");
    }

    @Test
    void graduatesFromTheEndsToTheCentreAndFillsUpTheEnds() {
        Strand strand = StrandSizer.size(strand("51 mm", "0 mm", Arrangement.GRADUATED, Knots.none(), null,
                run("small", "4 mm", 1), run("middle", "6 mm", 2), run("large", "8 mm", 1)));

        assertThat(strand.beads()).extracting(PlacedBead::bead).containsExactly(
                "small", "small", "middle", "middle", "large", "middle", "middle", "small", "small");
        assertThat(strand.difference()).isEqualTo(Quantity.parse("-3 mm"));
    }

    @Test
    void staysWithinTheBeadsThereAre() {
        Strand strand = StrandSizer.size(strand("40 cm", "0 mm", Arrangement.REPEATED, Knots.none(), 40, run("a", "8 mm", 1)));

        assertThat(strand.length()).isEqualTo(Quantity.parse("32 cm"));
        assertThat(strand.reasons()).extracting(Sentence::toString).contains("There are only 40 beads; 50 would come nearest.");
    }

    @Test
    void takesTheLongerOfTwoEquallyNear() {
        assertThat(StrandSizer.size(strand("12 mm", "0 mm", Arrangement.REPEATED, Knots.none(), null, run("a", "8 mm", 1))).length())
                .isEqualTo(Quantity.parse("16 mm"));
    }

    @Test
    void refusesAClosureLongerThanTheStrandAndDustForBeads() {
        assertThatThrownBy(() -> strand("2 cm", "25 mm", Arrangement.REPEATED, Knots.none(), null, run("a", "8 mm", 1)))
                .hasMessage("The finished length must be longer than the closure.");
        assertThatThrownBy(() -> strand("10 m", "0 mm", Arrangement.REPEATED, Knots.none(), null, run("a", "0.1 mm", 1)))
                .hasMessage("The number of beads must be from 0 to 5000, but is 100000.");
    }

    static List<StrandRequest> generated() {
        Random random = new Random(20250);
        return IntStream.range(0, 200).mapToObj(i -> {
            List<BeadRun> runs = new ArrayList<>();
            IntStream.rangeClosed(0, random.nextInt(4)).forEach(r ->
                    runs.add(run("bead " + r, (1 + random.nextInt(120)) / 10.0 + " mm", 1 + random.nextInt(4))));
            Knots knots = random.nextBoolean() ? Knots.none() : KNOTTED;
            Arrangement arrangement = Arrangement.values()[random.nextInt(3)];
            return new StrandRequest(Quantity.parse(30 + random.nextInt(300) + " mm"), Quantity.parse(random.nextInt(20) + " mm"), runs,
                    arrangement, knots, random.nextBoolean() ? null : 1 + random.nextInt(40));
        }).toList();
    }

    /** Against every count there is, worked out the long way. */
    @ParameterizedTest
    @MethodSource("generated")
    void noOtherCountComesNearer(StrandRequest request) {
        Strand strand = StrandSizer.size(request);
        int most = request.maximum() == null ? 4000 : request.maximum();
        for (int n = 1; n <= Math.min(most, strand.beads().size() + 5); n++) {
            if (request.arrangement().allows(request.pattern(), n)) {
                assertThat(gap(request, n)).isGreaterThanOrEqualTo(strand.difference().base().abs());
            }
        }
        assertThat(gap(request, strand.beads().size())).isEqualByComparingTo(strand.difference().base().abs());
    }

    @ParameterizedTest
    @MethodSource("generated")
    void drawsAsLongAsItSays(StrandRequest request) {
        Strand strand = StrandSizer.size(request);
        PlacedBead last = strand.beads().get(strand.beads().size() - 1);
        assertThat(last.at().plus(last.size()).plus(request.closure())).isEqualTo(strand.length());
        assertThat(strand.counts().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(strand.beads().size());
    }

    private static BigDecimal gap(StrandRequest request, int n) {
        BigDecimal length = request.closure().base();
        for (BeadRun bead : request.arrangement().sequence(request.pattern(), n)) {
            length = length.add(bead.size().base());
        }
        BigDecimal knot = request.knots().between() ? request.knots().along().base() : BigDecimal.ZERO;
        return length.add(knot.multiply(BigDecimal.valueOf(n - 1L))).subtract(request.target().base()).abs();
    }

    private static StrandRequest strand(String target, String closure, Arrangement arrangement, Knots knots, Integer maximum, BeadRun... pattern) {
        return new StrandRequest(Quantity.parse(target), Quantity.parse(closure), List.of(pattern), arrangement, knots, maximum);
    }

    private static BeadRun run(String bead, String size, int count) {
        return new BeadRun(bead, Quantity.parse(size), count);
    }

    private static PlacedBead placed(String bead, String at, String size) {
        return new PlacedBead(bead, Quantity.parse(at), Quantity.parse(size));
    }
}
