package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.SkillLevel;
import benchful.core.quantity.Sentence;
import java.time.LocalTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a tutor is told of a class before she prints: each rule at its boundary. */
class AdviceFinderTest {
    @Test
    void saysNothingOfAClassThatFitsItsRoom() {
        assertThat(AdviceFinder.of(in(SmallClass.of(8), 8).file())).isEmpty();
        assertThat(AdviceFinder.of(SmallClass.of(200).in("Hall", null, null).file())).isEmpty();
    }

    @Test
    void countsTheSeatsOfTheRoom() {
        assertThat(AdviceFinder.of(in(SmallClass.of(9), 8).file())).containsExactly(
                new Advice("Seats", "Shed seats 8; 9 students are coming. Take fewer, add a table, or choose another room."));
        assertThat(AdviceFinder.of(SmallClass.of(9).file())).containsExactly(
                new Advice("Venue", "No venue is chosen. Choose one so that its seats and tools are checked."));
    }

    @Test
    void warnsOfStudentsWhoAreTooYoungForTheProject() {
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).from(19).youngest(18).file())).containsExactly(
                new Advice("Age", "“Hanger” is for 19 years and older; the youngest is 18. Choose another project or change the group."));
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).from(18).youngest(18).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).from(18).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).youngest(18).file())).isEmpty();
    }

    /** NSPCC Learning, recommended adult to child ratios, 2023: 4-8 years 1 to 6, 9-12 1 to 8, 13-18 1 to 10, never under two. */
    @ParameterizedTest
    @CsvSource({"1, 8, 2", "12, 8, 2", "13, 8, 3", "13, 9, 2", "16, 12, 2", "17, 12, 3", "17, 13, 2", "20, 17, 2", "21, 17, 3", "24, 4, 4"})
    void asksForAsManyAdultsAsThePublishedRatios(int children, int youngest, int adults) {
        assertThat(AdviceFinder.adults(children, youngest)).isEqualTo(adults);
    }

    @Test
    void countsTheTutorAmongTheAdults() {
        assertThat(AdviceFinder.of(in(SmallClass.of(7), 8).youngest(9).helpers(1).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(7), 8).youngest(9).file())).containsExactly(new Advice("Supervision",
                "With children of 9 a group of 7 should have 2 adults (NSPCC, 2023: never fewer than two). You and your helpers are 1."));
        assertThat(AdviceFinder.of(in(SmallClass.of(17), 20).youngest(9).helpers(1).file())).extracting(advice -> advice.sentence().toString()).singleElement().asString()
                .endsWith("You and your helpers are 2.");
        assertThat(AdviceFinder.of(in(SmallClass.of(7), 8).youngest(17).file())).extracting(Advice::about).containsExactly("Supervision");
        assertThat(AdviceFinder.of(in(SmallClass.of(7), 8).youngest(18).file())).isEmpty();
    }

    @Test
    void warnsOfAGroupThatIsLessPractisedThanTheProjectAsks() {
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).writtenFor(SkillLevel.IMPROVER).level(SkillLevel.BEGINNER).file())).containsExactly(
                new Advice("Level", "“Hanger” is written for an improver group; yours are beginners. Allow more time or choose a smaller size."));
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).writtenFor(SkillLevel.IMPROVER).level(SkillLevel.IMPROVER).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).writtenFor(SkillLevel.IMPROVER).level(SkillLevel.EXPERIENCED).file())).isEmpty();
    }

    @Test
    void countsToolsThatEverybodyMustHave() {
        SmallClass goggles = SmallClass.of(6).in("Shed", 8, Map.of("goggles", 4)).ownTool("goggles").sharedTool("kiln");
        assertThat(AdviceFinder.of(goggles.file())).containsExactly(
                new Advice("Tools", "Each student must have their own goggles: bring 2 more (4 of 6 are there)."));
        assertThat(AdviceFinder.of(goggles.brings("goggles", 2).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(6), 8).ownTool("apron").file())).containsExactly(
                new Advice("Tools", "Each student must have their own apron, and nobody wrote down how many there are: bring 6, or write the number in the class or in the project."));
    }

    /** One that no meeting is long enough for is the lesson engine's to name. */
    @Test
    void saysWhichBreakIsLeftOut() {
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).rests(LocalTime.of(20, 45), 15).file())).isEmpty();
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).rests(LocalTime.of(20, 46), 15).file())).containsExactly(new Advice("Break",
                Sentence.of("The break at %s for 15 min does not fit into the hours and is left out. Move or shorten it if the class should have one.", LocalTime.of(20, 46))));
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).rests(LocalTime.of(20, 46), 180).file())).extracting(Advice::about).containsExactly("Break");
        assertThat(AdviceFinder.of(in(SmallClass.of(2), 8).rests(LocalTime.of(20, 46), 181).file())).isEmpty();
    }

    private static SmallClass in(SmallClass some, int seats) {
        return some.in("Shed", seats, null);
    }
}
