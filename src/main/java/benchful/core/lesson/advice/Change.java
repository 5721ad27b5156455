package benchful.core.lesson.advice;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.AtHome;
import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.time.Period;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One thing a tutor could do otherwise. */
public sealed interface Change permits BreakChange, Change.PrepareAhead, Change.TakenHome, Change.MoreTools, Change.Helper, Change.FewerStudents, Change.EarlierStart,
        Change.LongerBooking, Change.MoreMeetings, Change.SplitInTwo, Change.OwnPace, Change.OneMoreGroup, Change.ShownToGroups, Change.Other {

    /** More people than any class has. */
    int EVERYBODY = 1_000_000;

    /** The request as it would be. */
    LessonRequest apply(LessonRequest request);

    /** What to do, as a call: "Bring one more pliers". */
    Sentence title();

    /** How much it asks of the tutor and of others. */
    Trouble trouble();

    /** How far it goes, to tell two of the same trouble: minutes, or people concerned; 0 where it goes one way only. */
    default int extent() {
        return 0;
    }

    /** The same of all that are only more or less of one thing. */
    default Object kind() {
        return this;
    }

    /** Whether it is that change and more of the same. */
    default boolean includes(Change other) {
        return false;
    }

    /** What the students lose by it, without a full stop; empty where it is nothing. */
    default String loses() {
        return "";
    }

    /** What more it asks of the tutor in the class, without a full stop; empty where it is nothing. */
    default String asks() {
        return "";
    }

    /** From what she does alone to what everybody must agree to. */
    enum Trouble {
        /** Teach otherwise. */
        TEACH,
        /** Prepare or bring something. */
        PREPARE,
        /** Ask a person to help. */
        ASK,
        /** Agree other hours, or another piece, with those concerned. */
        AGREE,
        /** Turn somebody away, or have everybody come again. */
        CHANGE_THE_CLASS
    }

    /** Do a make step, and all that must come before it, before the class. */
    record PrepareAhead(List<String> steps, String names) implements Change {
        public PrepareAhead {
            steps = List.copyOf(steps);
        }

        @Override
        public LessonRequest apply(LessonRequest request) {
            Set<String> all = new HashSet<>(request.preparedAhead());
            all.addAll(steps);
            return request.toBuilder().preparedAhead(all).build();
        }

        @Override
        public boolean includes(Change other) {
            return other instanceof PrepareAhead less && !steps.equals(less.steps) && steps.containsAll(less.steps);
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Prepare " + names + " before the class");
        }

        @Override
        public String loses() {
            return "They find " + names + " done, and read how it is made";
        }

        @Override
        public Trouble trouble() {
            return Trouble.PREPARE;
        }
    }

    /**
     * Let students do make steps at home, after the class.
     *
     * @param takes what they usually take who has most to do
     */
    record TakenHome(List<String> steps, String names, Duration takes) implements Change {
        public TakenHome {
            steps = List.copyOf(steps);
        }

        static TakenHome of(List<Step.Make> makes) {
            Duration takes = makes.stream().map(AtHome::length).reduce(Duration.ZERO, Duration::plus);
            return new TakenHome(makes.stream().map(Step::id).toList(), makes.stream().map(make -> "\"" + make.title() + "\"").collect(Collectors.joining(" and ")), takes);
        }

        @Override
        public LessonRequest apply(LessonRequest request) {
            return AtHome.of(request, steps);
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Let them do " + names + " at home");
        }

        @Override
        public String loses() {
            return "They go home with an unfinished piece, and need about " + MinuteWords.minutes(takes) + " more";
        }

        @Override
        public int extent() {
            return (int) takes.toMinutes();
        }

        @Override
        public Object kind() {
            return TakenHome.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.ASK;
        }
    }

    /** Bring more of a tool, or of several that are short together. */
    record MoreTools(List<RoomTool> more) implements Change {
        public MoreTools {
            more = List.copyOf(more);
        }

        public MoreTools(String tool, int count) {
            this(List.of(new RoomTool(tool, count)));
        }

        @Override
        public LessonRequest apply(LessonRequest request) {
            LessonRequest.Builder changed = request.toBuilder();
            more.forEach(tool -> changed.tool(tool.name(), tool.count()));
            return changed.build();
        }

        @Override
        public Sentence title() {
            List<String> words = more.stream().map(tool -> tool.count() + " × " + tool.name()).toList();
            String last = words.get(words.size() - 1);
            return Sentence.plain(extent() == 1 ? "Bring one more " + more.get(0).name()
                    : "Bring " + (words.size() == 1 ? last : String.join(", ", words.subList(0, words.size() - 1)) + " and " + last) + " more");
        }

        @Override
        public int extent() {
            return more.stream().mapToInt(RoomTool::count).sum();
        }

        @Override
        public Object kind() {
            return more.stream().map(RoomTool::name).collect(Collectors.toSet());
        }

        @Override
        public Trouble trouble() {
            return Trouble.PREPARE;
        }
    }

    /** Have one more person to help. */
    record Helper() implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            return request.toBuilder().helpers(request.helpers() + 1).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Have one more helper");
        }

        @Override
        public Trouble trouble() {
            return Trouble.ASK;
        }
    }

    /** Take fewer students. Nobody knows who stays away: each is one of those who are most alike. */
    record FewerStudents(int fewer) implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            List<Integer> seats = staying(request);
            return request.toBuilder().headcount(seats.size()).steps(request.steps().stream().map(step -> step instanceof Step.Make make ? make.of(seats) : step).toList()).build();
        }

        private List<Integer> staying(LessonRequest request) {
            Map<List<StudentTime.Work>, Deque<Integer>> alike = new LinkedHashMap<>();
            IntStream.range(0, request.headcount()).forEach(seat -> alike.computeIfAbsent(works(request, seat), work -> new ArrayDeque<>()).add(seat));
            for (int i = 0; i < fewer; i++) {
                int most = alike.values().stream().mapToInt(Deque::size).max().orElseThrow();
                alike.values().stream().filter(seats -> seats.size() == most).findFirst().orElseThrow().removeLast();
            }
            return alike.values().stream().flatMap(Deque::stream).sorted().toList();
        }

        private static List<StudentTime.Work> works(LessonRequest request, int seat) {
            return request.steps().stream().flatMap(step -> step instanceof Step.Make make ? Stream.of(make.time().workOf(seat)) : Stream.empty()).toList();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Take " + (fewer == 1 ? "one student" : fewer + " students") + " fewer");
        }

        @Override
        public String loses() {
            return (fewer == 1 ? "One student has" : fewer + " students have") + " no place";
        }

        @Override
        public int extent() {
            return fewer;
        }

        @Override
        public Object kind() {
            return FewerStudents.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.CHANGE_THE_CLASS;
        }
    }

    /** Begin the first meeting earlier. */
    record EarlierStart(Duration by) implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            List<Meeting> meetings = new ArrayList<>(request.meetings());
            meetings.set(0, new Meeting(meetings.get(0).start().minus(by), meetings.get(0).end()));
            return request.toBuilder().meetings(meetings).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Begin " + MinuteWords.minutes(by) + " earlier");
        }

        @Override
        public String loses() {
            return "They come " + MinuteWords.minutes(by) + " earlier";
        }

        @Override
        public int extent() {
            return (int) by.toMinutes();
        }

        @Override
        public Object kind() {
            return EarlierStart.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.AGREE;
        }
    }

    /** Book the last meeting longer. */
    record LongerBooking(Duration by) implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            List<Meeting> meetings = new ArrayList<>(request.meetings());
            Meeting last = meetings.remove(meetings.size() - 1);
            meetings.add(new Meeting(last.start(), last.end().plus(by)));
            return request.toBuilder().meetings(meetings).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Book " + MinuteWords.minutes(by) + " more");
        }

        @Override
        public String loses() {
            return "They stay up to " + MinuteWords.minutes(by) + " longer";
        }

        @Override
        public int extent() {
            return (int) by.toMinutes();
        }

        @Override
        public Object kind() {
            return LongerBooking.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.AGREE;
        }
    }

    /** Meet so many times more, each with the hours and breaks of the last meeting and so much after the one before. */
    record MoreMeetings(int times, Period later) implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            Meeting last = request.meetings().get(request.meetings().size() - 1);
            List<Break> breaks = request.breaks().stream().filter(pause -> !pause.start().isBefore(last.start())).toList();
            LessonRequest.Builder more = request.toBuilder();
            for (int i = 1; i <= times; i++) {
                Period by = later.multipliedBy(i);
                more.meeting(last.start().plus(by), last.end().plus(by));
                breaks.forEach(pause -> more.pause(pause.title(), pause.start().plus(by), pause.end().plus(by)));
            }
            return more.build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Meet " + (times == 1 ? "once" : times + " times") + " more");
        }

        @Override
        public String loses() {
            return "They come on " + (times == 1 ? "one more day" : times + " more days");
        }

        @Override
        public int extent() {
            return EVERYBODY * times;
        }

        @Override
        public Object kind() {
            return MoreMeetings.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.CHANGE_THE_CLASS;
        }
    }

    /**
     * Teach the one meeting in two, each half as long, the second so much later; breaks stay at their time of day where they
     * fall into the shorter hours.
     *
     * @param first how long the first of the two lasts
     */
    record SplitInTwo(Duration first, Period later) implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            Meeting whole = request.meetings().get(0);
            Meeting one = new Meeting(whole.start(), whole.start().plus(first));
            Meeting other = new Meeting(whole.start().plus(later), whole.start().plus(later).plus(Duration.between(one.end(), whole.end())));
            List<Break> breaks = Stream.concat(request.breaks().stream().filter(pause -> within(one, pause)), request.breaks().stream()
                    .map(pause -> new Break(pause.title(), pause.start().plus(later), pause.end().plus(later))).filter(pause -> within(other, pause))).toList();
            return request.toBuilder().meetings(List.of(one, other)).breaks(breaks).build();
        }

        private static boolean within(Meeting meeting, Break pause) {
            return !pause.start().isBefore(meeting.start()) && !pause.end().isAfter(meeting.end());
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Teach it in two meetings of half the length");
        }

        @Override
        public String loses() {
            return "They come on two days";
        }

        @Override
        public int extent() {
            return EVERYBODY;
        }

        @Override
        public Trouble trouble() {
            return Trouble.CHANGE_THE_CLASS;
        }
    }

    /** Let students go on alone between demonstrations. */
    record OwnPace() implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            return request.toBuilder().pacing(Pacing.OWN_PACE).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Let students go on at their own pace between demonstrations");
        }

        @Override
        public Trouble trouble() {
            return Trouble.TEACH;
        }
    }

    /** Work in one more group, so that groups take turns at what is scarce. */
    record OneMoreGroup() implements Change {
        @Override
        public LessonRequest apply(LessonRequest request) {
            return request.toBuilder().groups(request.groups() + 1).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain("Work in groups that take the steps in turn");
        }

        @Override
        public Trouble trouble() {
            return Trouble.TEACH;
        }
    }

    /**
     * Show demonstrations to one group after the other, in a class that works in groups, or is to.
     *
     * @param groups  into which the class is parted
     * @param parted  whether it works in groups already
     * @param showing how long the tutor then shows them in all
     * @param once    how long she shows them to all together
     */
    record ShownToGroups(List<String> steps, String names, int groups, boolean parted, Duration showing, Duration once) implements Change {
        public ShownToGroups {
            steps = List.copyOf(steps);
        }

        /** Of a class that works in groups, or is to work in two. */
        static ShownToGroups of(LessonRequest request, List<Step.Show> shows) {
            int groups = Math.max(2, request.groups());
            LessonRequest then = request.toBuilder().groups(groups).build();
            Duration once = shows.stream().map(show -> request.length(show, request.headcount())).reduce(Duration.ZERO, Duration::plus);
            Duration showing = shows.stream().flatMap(show -> IntStream.rangeClosed(1, groups).mapToObj(group -> then.length(show, then.members(group)))).reduce(Duration.ZERO, Duration::plus);
            String names = shows.stream().map(show -> "\"" + show.title() + "\"").collect(Collectors.joining(" and "));
            return new ShownToGroups(shows.stream().map(Step::id).toList(), names, groups, request.groups() == groups, showing, once);
        }

        @Override
        public LessonRequest apply(LessonRequest request) {
            return request.toBuilder().groups(Math.max(groups, request.groups())).steps(request.steps().stream()
                    .map(step -> step instanceof Step.Show show && steps.contains(step.id()) ? show.eachGroup() : step).toList()).build();
        }

        @Override
        public Sentence title() {
            return Sentence.plain(parted ? "Show " + names + " to a group at a time" : "Work in groups that take the steps in turn, and show " + names + " to a group at a time");
        }

        @Override
        public String asks() {
            return "You show %s %s, %s in all instead of %s".formatted(steps.size() == 1 ? "it" : "them", groups == 2 ? "twice" : groups + " times",
                    MinuteWords.minutes(showing), MinuteWords.minutes(once));
        }

        @Override
        public int extent() {
            return (int) showing.minus(once).toMinutes();
        }

        @Override
        public Object kind() {
            return ShownToGroups.class;
        }

        @Override
        public Trouble trouble() {
            return Trouble.TEACH;
        }
    }

    /**
     * A change that only the caller knows how to make, such as a smaller size.
     *
     * @param loses what the students lose by it
     * @param how   makes it upon any request, also one that is changed already, and leaves all else in it as it is
     */
    record Other(Sentence title, String loses, UnaryOperator<LessonRequest> how) implements Change {
        public Other(String title, String loses, UnaryOperator<LessonRequest> how) {
            this(Sentence.plain(title), loses, how);
        }

        @Override
        public LessonRequest apply(LessonRequest request) {
            return how.apply(request);
        }

        @Override
        public Trouble trouble() {
            return Trouble.AGREE;
        }
    }
}
