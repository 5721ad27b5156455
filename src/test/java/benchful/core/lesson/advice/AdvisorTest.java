package benchful.core.lesson.advice;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Progress;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Promised;
import java.time.Duration;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class AdvisorTest {

    private final LessonPlanner planner = new ListPlanner();
    private final Advisor advisor = new Advisor(planner, change -> change instanceof Change.MoreTools
            ? Optional.of(Money.of(CurrencyUnit.EUR, 18)) : Optional.empty());

    /** Too long for 78 minutes. Invented times. */
    private static LessonRequest tooLong() {
        return LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusMinutes(78)).tool("saw", 4).replications(800)
                .step(new Step.Show("show", "Show sawing", Duration.ofMinutes(10)))
                .step(new Step.Make("blank", "Cut the blank", StudentTime.ofMinutes(5, 8, 15)))
                .step(new Step.Make("saw", "Saw the outline", StudentTime.ofMinutes(10, 15, 25), List.of(new ToolUse("saw", 1)),
                        new Help(4, 2), 1, true))
                .step(new Step.Make("file", "File the edge", StudentTime.ofMinutes(10, 15, 25)))
                .link("show", "saw").link("blank", "saw").link("saw", "file").build();
    }

    /** The same steps in other hours [min]. */
    private static LessonRequest lasting(int minutes) {
        return tooLong().toBuilder().meetings(List.of(new Meeting(TEN, TEN.plusMinutes(minutes)))).build();
    }

    private Advice advice(LessonRequest request) {
        return advisor.advise(request, List.of(), Progress.NONE).orElseThrow();
    }

    private static Suggestion of(Advice advice, Change change) {
        return advice.suggestions().stream().filter(one -> one.changes().equals(List.of(change))).findFirst().orElseThrow();
    }

    /**
     * Four saws and four pins for eight, and setting is shown in between: 40, 12 and 40 minutes, as four wait each time. In two groups the first is shown it while the
     * second saws: 20, 20, 12 and 20; only to work in groups gains nothing, as all must have sawn before anybody is shown it.
     */
    @Test
    void worksInGroupsWhereEachIsShownWhatItNeeds() {
        Step.Show show = new Step.Show("show", "Show setting", Duration.ofMinutes(12));
        LessonRequest request = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusMinutes(85)).tool("saw", 4).tool("pin", 4).replications(400)
                .step(new Step.Make("saw", "Saw", StudentTime.ofMinutes(18, 20, 22), List.of(new ToolUse("saw", 1)), Help.NONE, 1, true)).step(show)
                .step(new Step.Make("set", "Set", StudentTime.ofMinutes(18, 20, 22), List.of(new ToolUse("pin", 1)), Help.NONE, 1, true)).link("saw", "show").link("show", "set").build();
        Advice advice = advice(request);
        assertThat(advice.suggestions().get(0).title()).hasToString("Work in groups that take the steps in turn, and show \"Show setting\" to a group at a time");
        assertThat(advice.suggestions().get(0).asks()).isEqualTo("You show it twice, 24 min in all instead of 12 min");
        assertThat(advice.suggestions()).noneMatch(one -> one.changes().contains(new Change.OneMoreGroup()));
    }

    @Test
    void listsWhatEachChangeGainsAndCosts() {
        Advice advice = advice(tooLong());
        Suggestion blank = of(advice, new Change.PrepareAhead(List.of("blank"), "\"Cut the blank\""));
        assertThat(blank.gained()).isBetween(Duration.ofMinutes(10), Duration.ofMinutes(15));
        assertThat(blank.preparation()).isEqualTo(Duration.ofSeconds(8 * 160));
        assertThat(blank.cost()).isEmpty();
        Suggestion saw = of(advice, new Change.MoreTools("saw", 4));
        assertThat(saw.cost()).contains(Money.of(CurrencyUnit.EUR, 18));
        assertThat(saw.sentence()).startsWith("Bring 4 × saw more: gains ").endsWith(", costs EUR 18.00.");
        assertThat(of(advice, new Change.LongerBooking(Duration.ofMinutes(15))).gained()).isEqualTo(Duration.ofMinutes(15));
        assertThat(of(advice, new Change.OwnPace()).chanceGained()).isPositive();
    }

    @Test
    void ranksWhatMakesItFitByItsTroubleAndTheRestByTheChanceGained() {
        List<Suggestion> all = advice(lasting(72)).suggestions();
        List<Suggestion> good = all.stream().filter(one -> one.chance() >= 0.9 && one.plan().fits()).toList();
        assertThat(good).isNotEmpty().extracting(Suggestion::trouble).isSorted();
        assertThat(good.get(0).changes()).extracting(Change::trouble).isSubsetOf(Change.Trouble.TEACH, Change.Trouble.PREPARE);
        assertThat(all.subList(0, good.size())).isEqualTo(good);
        assertThat(all.subList(good.size(), all.size())).isNotEmpty().extracting(one -> -Math.round(one.chanceGained() * 100)).isSorted();
    }

    /** Booked 25 minutes for more than an hour and a half, other hours are another class; a few minutes too long, nobody comes again. */
    @Test
    void asksToComeAgainOnlyWhereNothingLesserSuffices() {
        assertThat(advice(lasting(25)).suggestions()).flatExtracting(Suggestion::changes).contains(new Change.MoreMeetings(3, Period.ofWeeks(1)));
        assertThat(advice(lasting(72)).suggestions()).isNotEmpty().flatExtracting(Suggestion::changes).noneMatch(change -> change.extent() >= Change.EVERYBODY);
    }

    /** Half an hour short: quarters of an hour do not suffice, and more than is needed is not said. */
    @Test
    void booksAsMuchAsIsNeeded() {
        assertThat(advice(lasting(50)).suggestions()).extracting(Suggestion::changes).filteredOn(changes -> changes.get(0) instanceof Change.LongerBooking)
                .containsExactly(List.of(new Change.LongerBooking(Duration.ofMinutes(45))));
        LessonRequest lessBooked = new Change.LongerBooking(Duration.ofMinutes(30)).apply(lasting(50));
        assertThat(ClassSimulation.of(lessBooked, Lessons.plan(planner.plan(lessBooked))).onTime()).isLessThan(0.9);
        assertThat(advice(lasting(84)).suggestions()).extracting(Suggestion::changes).filteredOn(changes -> changes.get(0) instanceof Change.LongerBooking)
                .containsExactly(List.of(new Change.LongerBooking(Duration.ofMinutes(15))));
    }

    /** Seven minutes too long, and three minutes are for each student. */
    @Test
    void turnsAwayAsFewAsIsNeeded() {
        LessonRequest request = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusMinutes(52)).replications(100)
                .step(new Step.Make("make", "Make it", StudentTime.ofMinutes(30, 30, 30)))
                .step(new Step.Together("try", "Try it on", Duration.ofMinutes(5), Duration.ofMinutes(3), List.of())).link("make", "try").build();
        List<Suggestion> fewer = advice(request).suggestions().stream().filter(one -> one.changes().get(0) instanceof Change.FewerStudents).toList();
        assertThat(fewer).extracting(Suggestion::changes).containsExactly(List.of(new Change.FewerStudents(3)));
        assertThat(fewer.get(0).gained()).isEqualTo(Duration.ofMinutes(9));
    }

    /** Of two who make a large piece and six who make a small one, it is taken to be the small ones who stay away, until they are as few. */
    @Test
    void turnsAwayThoseWhoAreMostAlike() {
        List<StudentTime.Work> works = List.of(new StudentTime.Work(1, 1), new StudentTime.Work(3, 1), new StudentTime.Work(1, 1), new StudentTime.Work(1, 1),
                new StudentTime.Work(1, 1), new StudentTime.Work(3, 1), new StudentTime.Work(1, 1), new StudentTime.Work(1, 1));
        LessonRequest request = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(1))
                .step(new Step.Make("make", "Make it", new StudentTime(Duration.ofMinutes(5), Duration.ofMinutes(8), Duration.ofMinutes(9), works))).build();
        LessonRequest fewer = new Change.FewerStudents(4).apply(request);
        assertThat(fewer.headcount()).isEqualTo(4);
        assertThat(((Step.Make) fewer.steps().get(0)).time().work()).extracting(StudentTime.Work::repeats).containsExactly(1, 3, 1, 3);
    }

    @Test
    void putsWhatCostsLessMoneyFirstAmongWhatAsksTheSame() {
        Advisor dear = new Advisor(planner, change -> Optional.of(Money.of(CurrencyUnit.EUR, change instanceof Change.EarlierStart ? 5 : 50)));
        List<Suggestion> good = dear.advise(lasting(84), List.of(), Progress.NONE).orElseThrow().suggestions().stream()
                .filter(one -> one.trouble() == Change.Trouble.AGREE.ordinal() * 2 + 1 && one.chance() >= 0.9).toList();
        assertThat(good).extracting(one -> one.cost().orElseThrow().getAmount()).isSorted().hasSizeGreaterThan(1);
        assertThat(good.get(0).changes().get(0)).isInstanceOf(Change.EarlierStart.class);
    }

    @Test
    void offersNoHoursPastMidnight() {
        LessonRequest late = tooLong().toBuilder().meetings(List.of(new Meeting(TEN.plusHours(12).plusMinutes(17), TEN.plusHours(13).plusMinutes(35)))).build();
        assertThat(advice(late).suggestions()).flatExtracting(Suggestion::changes)
                .contains(new Change.LongerBooking(Duration.ofMinutes(15))).doesNotContain(new Change.LongerBooking(Duration.ofMinutes(30)));
    }

    @Test
    void showsNothingThatLosesMoreOfTheChanceThanItGainsInMinutes() {
        for (int minutes : new int[] {60, 72, 84}) {
            assertThat(advice(lasting(minutes)).suggestions()).allMatch(one -> one.chanceGained() > -0.01);
        }
    }

    @Test
    void splitsALongMeetingInTwoAndKeepsBreaksThatFallIntoThem() {
        LessonRequest day = tooLong().toBuilder().meetings(List.of(new Meeting(TEN, TEN.plusHours(5))))
                .pause("Tea", TEN.plusMinutes(60), TEN.plusMinutes(75)).pause("Lunch", TEN.plusMinutes(150), TEN.plusMinutes(180)).build();
        LessonRequest split = new Change.SplitInTwo(Duration.ofMinutes(150), Period.ofWeeks(1)).apply(day);
        assertThat(split.meetings()).containsExactly(new Meeting(TEN, TEN.plusMinutes(150)),
                new Meeting(TEN.plusWeeks(1), TEN.plusWeeks(1).plusMinutes(150)));
        assertThat(split.breaks()).extracting(pause -> pause.start()).containsExactly(TEN.plusMinutes(60), TEN.plusWeeks(1).plusMinutes(60));
    }

    @Test
    void carriesARequestThatIsReadyToBeTaken() {
        LessonRequest request = tooLong();
        assertThat(advice(request).suggestions()).isNotEmpty().allSatisfy(suggestion -> {
            assertThat(suggestion.request().replications()).isEqualTo(request.replications());
            LessonPlan order = Lessons.plan(planner.plan(suggestion.request()));
            assertThat(Promised.of(suggestion.request(), order).plan()).isEqualTo(suggestion.plan());
            assertThat(LessonChecker.faults(suggestion.request(), order)).isEmpty();
        });
    }

    @Test
    void showsPairsThatAreBetterThanEitherHalf() {
        Advice advice = advice(lasting(72));
        List<Suggestion> pairs = advice.suggestions().stream().filter(one -> one.changes().size() == 2).toList();
        assertThat(pairs).extracting(pair -> pair.title().toString()).contains("Prepare \"Cut the blank\" before the class; Bring one more saw");
        assertThat(pairs).isNotEmpty().allSatisfy(pair -> pair.changes().forEach(half -> advice.suggestions().stream()
                .filter(one -> one.changes().equals(List.of(half)))
                .forEach(one -> assertThat(pair.gained().compareTo(one.gained()) > 0 || pair.chance() > one.chance()).isTrue())));
    }

    @Test
    void triesChangesThatOnlyTheCallerKnows() {
        Change smaller = new Change.Other("Make the small size", "", request -> request.toBuilder().steps(request.steps().stream()
                .filter(step -> !step.id().equals("file")).toList()).links(request.links().subList(0, 2)).build());
        Advice advice = advisor.advise(tooLong(), List.of(smaller), Progress.NONE).orElseThrow();
        assertThat(of(advice, smaller).gained()).isGreaterThan(Duration.ofMinutes(15));
    }

    @Test
    void stopsWhenCancelledAndTellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        Advice advice = advisor.advise(tooLong(), List.of(), new Progress() {
            @Override
            public boolean isGivenUp() {
                return told.size() == 3;
            }

            @Override
            public void tell(int done, int all) {
                told.add(done + " of " + (all > done));
            }
        }).orElseThrow();
        assertThat(told).containsExactly("1 of true", "2 of true", "3 of true");
        assertThat(advice.complete()).isFalse();
    }

    @Test
    void isSilentWhereTheRequestContradictsItself() {
        assertThat(advisor.advise(tooLong().toBuilder().link("file", "saw").build(), List.of(), Progress.NONE)).isEmpty();
    }

    @Test
    void givesTheSameAdviceForTheSameRequest() {
        assertThat(advice(tooLong()).suggestions()).extracting(Suggestion::sentence)
                .isEqualTo(advice(tooLong()).suggestions().stream().map(Suggestion::sentence).toList());
    }

    /** Each student takes three tools at once, and of each there are two too few: only all three together help. */
    @Test
    void bringsToolsTogetherThatAreShortTogether() {
        List<ToolUse> three = List.of(new ToolUse("mat", 1), new ToolUse("knife", 1), new ToolUse("ruler", 1));
        LessonRequest request = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusMinutes(162)).replications(800).tool("mat", 6).tool("knife", 6).tool("ruler", 6)
                .step(new Step.Make("cut", "Cut the boards", StudentTime.ofMinutes(30, 40, 50), three, Help.NONE, 1, true))
                .step(new Step.Make("fold", "Fold", StudentTime.ofMinutes(30, 45, 60), three, Help.NONE, 1, true)).link("cut", "fold").build();
        Advice advice = advice(request);
        assertThat(advice.chance()).isLessThan(0.3);
        Suggestion tools = of(advice, new Change.MoreTools(List.of(new RoomTool("mat", 2), new RoomTool("knife", 2), new RoomTool("ruler", 2))));
        assertThat(tools.title()).hasToString("Bring 2 × mat, 2 × knife and 2 × ruler more");
        assertThat(tools.gained()).isGreaterThan(Duration.ofMinutes(40));
        assertThat(tools.chance()).isEqualTo(1);
    }

    /** Of turns at a tool: as many as save a turn, halve the turns, and let all work at once; three saws for ten are four turns. */
    @Test
    void raisesToolsAsFarAsTheyGain() {
        LessonRequest request = tooLong().toBuilder().headcount(10).room(List.of(new RoomTool("saw", 3))).build();
        assertThat(new Changes(request, TEN.plusMinutes(90)).all()).filteredOn(change -> change instanceof Change.MoreTools).containsExactly(
                new Change.MoreTools("saw", 1), new Change.MoreTools("saw", 2), new Change.MoreTools("saw", 7));
    }

    @Test
    void neverOffersToPrepareWhatTheClassCameFor() {
        LessonRequest request = tooLong().toBuilder().meetings(List.of(new Meeting(TEN, TEN.plusMinutes(60)))).build();
        assertThat(new Changes(request, TEN.plusMinutes(90)).all()).filteredOn(change -> change instanceof Change.PrepareAhead)
                .flatExtracting(change -> ((Change.PrepareAhead) change).steps()).contains("blank").doesNotContain("saw");
    }

    @Test
    void offersNothingWhereTheClassFitsComfortably() {
        Advice advice = advice(lasting(150));
        assertThat(advice.comfortable()).isTrue();
        assertThat(advice.suggestions()).isEmpty();
        assertThat(advice(lasting(84)).comfortable()).isFalse();
    }
}
