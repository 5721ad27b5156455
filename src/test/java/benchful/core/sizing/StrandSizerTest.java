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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** Nine beads are 48 mm and 8 knots between them 9.6; two more would be 8 mm and 2.4. */
    @Test
    void countsTheKnotsOfAGraduatedStrandAndTheTwoBeadsThatItGrowsBy() {
        Strand strand = StrandSizer.size(strand("60 mm", "0 mm", Arrangement.GRADUATED, KNOTTED, null,
                run("small", "4 mm", 1), run("middle", "6 mm", 2), run("large", "8 mm", 1)));

        assertThat(strand.reasons()).extracting(Sentence::toString).containsExactly(
                "9 beads and 10 knots make 57.6 mm, 2.4 mm shorter than the 60 mm asked for.",
                "2 beads fewer would make 47.2 mm.",
                "2 beads more would make 68 mm.",
                "Each knot adds 1.2 mm along the strand and takes 6.1 mm of cord.");
    }

    /** Of three large beads in the centre one or two may lie alone; beside all three the ends grow on both sides. */
    @Test
    void growsAGraduatedStrandOneByOneUpToItsCentre() {
        assertThat(graduated("17 mm").reasons()).extracting(Sentence::toString).containsExactly(
                "2 beads and 0 knots make 16 mm, 1 mm shorter than the 17 mm asked for.", "1 bead fewer would make 8 mm.", "1 bead more would make 24 mm.");
        assertThat(graduated("24 mm").reasons()).extracting(Sentence::toString).containsExactly(
                "3 beads and 0 knots make 24 mm, just the 24 mm asked for.", "1 bead fewer would make 16 mm.", "2 beads more would make 32 mm.");
    }

    private static Strand graduated(String target) {
        return StrandSizer.size(strand(target, "0 mm", Arrangement.GRADUATED, Knots.none(), null, run("small", "4 mm", 1), run("large", "8 mm", 3)));
    }

    @Test
    void saysHowMuchOfTheLastRepeatThereIs() {
        BeadRun[] two = {run("a", "4 mm", 1), run("b", "6 mm", 1)};
        String cut = "The last repeat holds 1 of its 2 beads.";
        assertThat(StrandSizer.size(strand("14 mm", "0 mm", Arrangement.REPEATED, Knots.none(), null, two)).reasons()).extracting(Sentence::toString).contains(cut);
        assertThat(StrandSizer.size(strand("20 mm", "0 mm", Arrangement.REPEATED, Knots.none(), null, two)).reasons()).hasSize(3);
        assertThat(StrandSizer.size(closed("14 mm", null, two)).reasons()).extracting(Sentence::toString).contains(cut);
        assertThat(StrandSizer.size(closed("14 mm", Quantity.parse("1 mm"), two)).reasons()).extracting(Sentence::toString).containsExactly(
                "3 beads and 0 knots make 14 mm, just the 14 mm asked for.",
                "The pattern breaks at the join: no count within 1 mm of the length keeps it whole. Whole are 2 beads with 10 mm or 4 beads with 20 mm.",
                "1 bead fewer would make 10 mm.", "1 bead more would make 20 mm.");
    }

    private static StrandRequest closed(String target, Quantity tolerance, BeadRun... pattern) {
        return new StrandRequest(Quantity.parse(target), Quantity.parse("0 mm"), List.of(pattern), Arrangement.REPEATED, Knots.none(), null, true, tolerance);
    }

    @Test
    void staysWithinTheBeadsThereAre() {
        Strand strand = StrandSizer.size(strand("40 cm", "0 mm", Arrangement.REPEATED, Knots.none(), 40, run("a", "8 mm", 1)));

        assertThat(strand.length()).isEqualTo(Quantity.parse("32 cm"));
        assertThat(strand.reasons()).extracting(Sentence::toString).contains("There are only 40 beads; 50 would come nearest.");
        assertThat(StrandSizer.size(strand("40 cm", "0 mm", Arrangement.REPEATED, Knots.none(), 50, run("a", "8 mm", 1))).reasons()).hasSize(3);
    }

    @Test
    void stringsAnythingFromOneBeadToFiveThousand() {
        assertThat(StrandSizer.size(strand("5 m", "0 mm", Arrangement.REPEATED, Knots.none(), 1, run("a", "1 mm", 1))).beads()).hasSize(1);
        assertThat(StrandSizer.size(strand("5 m", "0 mm", Arrangement.REPEATED, Knots.none(), 5000, run("a", "1 mm", 1))).beads()).hasSize(5000);
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
        assertThatThrownBy(() -> strand("25 mm", "25 mm", Arrangement.REPEATED, Knots.none(), null, run("a", "8 mm", 1)))
                .hasMessage("The finished length must be longer than the closure.");
        assertThatThrownBy(() -> strand("40 cm", "0 mm", Arrangement.REPEATED, Knots.none(), 0, run("a", "8 mm", 1)))
                .hasMessage("The most beads must be from 1 to 5000, but is 0.");
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
            return StrandRequest.byLength(Quantity.parse(30 + random.nextInt(300) + " mm"), Quantity.parse(random.nextInt(20) + " mm"), runs,
                    arrangement, knots, random.nextBoolean() ? null : 1 + random.nextInt(40));
        }).toList();
    }

    /** Against every count there is, worked out the long way. */
    @Tag("long")
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

    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void drawsAsLongAsItSays(StrandRequest request) {
        Strand strand = StrandSizer.size(request);
        PlacedBead last = strand.beads().get(strand.beads().size() - 1);
        assertThat(last.at().plus(last.size()).plus(request.closure())).isEqualTo(strand.length());
        assertThat(strand.counts().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(strand.beads().size());
    }

    /** Three and one, mirrored, with a knot after each: 3 more than a multiple of 4 has a whole middle (a stringer's rule, checked by hand). */
    @ParameterizedTest
    @CsvSource({"40 cm, 20 mm, 47", "42 cm, 20 mm, 51", "45 cm, 20 mm, 55", "50 cm, 20 mm, 63", "19 cm, 20 mm, 19"})
    void keepsTheMiddleOfAMirroredStrandWhole(String target, String tolerance, int beads) {
        Strand strand = StrandSizer.size(within(threeAndOne(target), tolerance));
        assertThat(strand.beads()).hasSize(beads);
        assertThat(middleIsWhole(strand, threeAndOne(target))).isTrue();
    }

    /** The counts with a whole middle are 43 of 361.4 mm, 38.6 too short, and 47 of 392.2 mm, 7.8 too short. */
    @ParameterizedTest
    @CsvSource({"47, 40 mm, 47", "46, 40 mm, 43", "46, 20 mm, 46", "60, 7.8 mm, 47", "60, 7.7 mm, 48"})
    void breaksThePatternWhereTheBeadsThereAreKeepItWholeOnlyBeyondTheTolerance(int most, String tolerance, int beads) {
        StrandRequest asked = threeAndOne("40 cm");
        assertThat(StrandSizer.size(new StrandRequest(asked.target(), asked.closure(), asked.pattern(), asked.arrangement(), asked.knots(), most, false,
                Quantity.parse(tolerance))).beads()).hasSize(beads);
    }

    @Test
    void saysWhatThePatternCostAndWhereItBreaks() {
        assertThat(StrandSizer.size(within(threeAndOne("40 cm"), "20 mm")).reasons()).extracting(Sentence::toString)
                .contains("48 beads would come nearer, 401.4 mm, but break the pattern in the middle.");
        assertThat(StrandSizer.size(within(threeAndOne("40 cm"), "2 mm")).reasons()).extracting(Sentence::toString).contains(
                "The pattern breaks in the middle: no count within 2 mm of the length keeps it whole. Whole are 47 beads with 392.2 mm or 51 beads with 423 mm.");
    }

    /** Against every count there is: nearest of the whole ones within the tolerance, else nearest of all. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void takesTheNearestWholeCountWithinTheTolerance(StrandRequest request) {
        for (String tolerance : List.of("0 mm", "8 mm", "40 mm")) {
            for (boolean closed : List.of(false, true)) {
                StrandRequest asked = new StrandRequest(request.target(), request.closure(), request.pattern(), request.arrangement(), request.knots(),
                        request.maximum(), closed, Quantity.parse(tolerance));
                Strand strand = StrandSizer.size(asked);
                int most = request.maximum() == null ? strand.beads().size() + 60 : request.maximum();
                BigDecimal nearest = IntStream.rangeClosed(1, most).filter(n -> asked.arrangement().allows(asked.pattern(), n) && asked.isWhole(n))
                        .mapToObj(n -> gap(asked, n)).min(BigDecimal::compareTo).orElse(null);
                boolean within = nearest != null && nearest.compareTo(asked.tolerance().base()) <= 0;
                assertThat(strand.difference().base().abs()).isEqualByComparingTo(within ? nearest : StrandSizer.size(request).difference().base().abs());
                assertThat(!within || asked.isWhole(strand.beads().size())).isTrue();
                if (within && asked.arrangement() == Arrangement.MIRRORED) {
                    assertThat(middleIsWhole(strand, asked)).isTrue();
                }
            }
        }
    }

    /** Counted from the beads that lie there: as many of one kind about the centre as its run holds. */
    private static boolean middleIsWhole(Strand strand, StrandRequest request) {
        List<String> names = strand.beads().stream().map(PlacedBead::bead).toList();
        int left = (names.size() - 1) / 2;
        int right = names.size() / 2;
        String middle = names.get(left);
        while (left > 0 && names.get(left - 1).equals(middle)) {
            left--;
        }
        while (right < names.size() - 1 && names.get(right + 1).equals(middle)) {
            right++;
        }
        BeadRun run = request.pattern().stream().filter(r -> r.bead().equals(middle)).findFirst().orElseThrow();
        return request.pattern().size() == 1 || right - left + 1 == run.count();
    }

    private static StrandRequest threeAndOne(String target) {
        return strand(target, "33 mm", Arrangement.MIRRORED, KNOTTED, null, run("amazonite", "6 mm", 3), run("pearl", "8 mm", 1));
    }

    private static StrandRequest within(StrandRequest request, String tolerance) {
        return new StrandRequest(request.target(), request.closure(), request.pattern(), request.arrangement(), request.knots(), request.maximum(),
                false, Quantity.parse(tolerance));
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
        return StrandRequest.byLength(Quantity.parse(target), Quantity.parse(closure), List.of(pattern), arrangement, knots, maximum);
    }

    private static BeadRun run(String bead, String size, int count) {
        return new BeadRun(bead, Quantity.parse(size), count);
    }

    private static PlacedBead placed(String bead, String at, String size) {
        return new PlacedBead(bead, Quantity.parse(at), Quantity.parse(size));
    }
}
