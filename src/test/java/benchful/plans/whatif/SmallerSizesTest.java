package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.plans.SmallClass;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Smaller sizes for those whose pieces take the longest, in the words of the class's form. */
class SmallerSizesTest {
    @Test
    void offersTheThreeSizesNearestToTheLargestThatIsMade() {
        assertThat(SmallerSizes.of(sizes(2).want("80", 2).file()).keySet()).containsExactly(
                "Make “70” the largest size", "Make “60” the largest size", "Make “50” the largest size");
        assertThat(SmallerSizes.of(sizes(2).want("90", 1).file()).keySet()).containsExactly(
                "Make “80” the largest size", "Make “70” the largest size", "Make “60” the largest size");
    }

    @Test
    void movesAllWhoMakeALargerOne() {
        Map<String, WhatIf> offered = SmallerSizes.of(sizes(6).want("50", 2).want("70", 1).want("60", 1).student("Ann", "80").student("Ben", "50").file());

        assertThat(offered).containsExactlyInAnyOrderEntriesOf(Map.of(
                "Make “70” the largest size", new WhatIf(Map.of("/students/0/size", "70")),
                "Make “60” the largest size", new WhatIf(Map.of("/students/0/size", "60", "/sizes/70", "", "/sizes/60", "2")),
                "Make “50” the largest size", new WhatIf(Map.of("/students/0/size", "50", "/sizes/70", "", "/sizes/60", "", "/sizes/50", "4"))));
        assertThat(List.copyOf(offered.keySet())).startsWith("Make “70” the largest size");
    }

    /** Who is not spoken for makes the first, here the largest. */
    @Test
    void movesThoseWhoSaidNothing() {
        SmallClass first = SmallClass.of(3).size("80", "length", "80 mm").size("50", "length", "50 mm").repeats("knot", 1, "length / 10 mm");
        assertThat(SmallerSizes.of(first.want("50", 1).file())).isEqualTo(Map.of("Make “50” the largest size", new WhatIf(Map.of("/sizes/50", "3"))));
    }

    @Test
    void offersNothingWhereAllMakeTheQuickestOrAllSizesTakeAsLong() {
        assertThat(SmallerSizes.of(sizes(2).file())).isEmpty();
        SmallClass alike = SmallClass.of(2).size("small", "length", "50 mm").size("large", "length", "80 mm").makes("knot", 10).shows("end", 5);
        assertThat(SmallerSizes.of(alike.want("large", 2).file())).isEmpty();
    }

    /** A quarter of an hour for each centimetre of one step, against two hours for the whole of another. */
    @Test
    void weighsTheTimesOfAllSteps() {
        SmallClass two = SmallClass.of(1).size("wide", "length", "1 cm", "width", "9 cm").size("long", "length", "2 cm", "width", "1 cm")
                .repeats("knot", 15, "length / 1 cm").repeats("fringe", 1, "width / 1 cm");
        assertThat(SmallerSizes.of(two.want("long", 1).file()).keySet()).containsExactly("Make “wide” the largest size");
    }

    /** From 50 to 90 mm, the smallest first, each with as many knots as it has centimetres. */
    private static SmallClass sizes(int students) {
        SmallClass file = SmallClass.of(students);
        List.of("50", "60", "70", "80", "90").forEach(size -> file.size(size, "length", size + " mm"));
        return file.repeats("knot", 1, "length / 10 mm");
    }
}
