package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that decides the timed plan of one class. Built with {@link #builder()}; varied for what-ifs with {@link #toBuilder()}.
 *
 * @param steps         steps in project order, at most 1000
 * @param links         which step follows which
 * @param room          tools and equipment in the room
 * @param headcount     students, 1 to 1000
 * @param helpers       helpers beside the tutor, who always is there
 * @param groups        1 for the whole class together, more for groups that take their make steps in turn
 * @param pacing        how students go from one make step to the next, in the simulated class
 * @param meetings      booked hours, at least one
 * @param breaks        breaks at fixed times
 * @param preparedAhead ids of make and wait steps that the tutor does before this class; with them go the waits that follow
 *                      nothing else, and the demonstrations that show nothing else
 * @param notBefore     by id of a step, the time that the tutor asks for: it does not begin sooner, and no later than it must
 * @param searchFrom    an order that the search for the best one begins with; it asks for nothing, and what is no step is passed over
 * @param promise       share of such classes that are to keep the plan's times, in (0, 1)
 * @param seed          start of all random numbers
 * @param replications  simulated classes, at least 1
 * @param timeLimit     how long the search for the best order may take
 */
public record LessonRequest(List<Step> steps, List<Link> links, List<RoomTool> room, int headcount, int helpers, int groups,
        Pacing pacing, List<Meeting> meetings, List<Break> breaks, Set<String> preparedAhead,
        Map<String, LocalDateTime> notBefore, List<Turn> searchFrom, double promise, long seed, int replications, Duration timeLimit) {

    public LessonRequest {
        steps = List.copyOf(steps);
        links = List.copyOf(links);
        meetings = List.copyOf(meetings);
        breaks = List.copyOf(breaks);
        preparedAhead = new Preparation.Whole(steps, links).with(preparedAhead);
        notBefore = Map.copyOf(notBefore);
        searchFrom = List.copyOf(searchFrom);
        atMost(1000, steps.size(), "The number of steps");
        Guard.atLeast(1, headcount, "The number of students");
        atMost(1000, headcount, "The number of students");
        Guard.atLeast(0, helpers, "The number of helpers");
        atMost(1000, helpers, "The number of helpers");
        Guard.atLeast(1, groups, "The number of groups");
        Guard.atLeast(1, meetings.size(), "The number of meetings");
        Guard.atLeast(1, replications, "The number of simulated classes");
        Guard.notNegative(timeLimit, "time limit");
        if (!(promise > 0 && promise < 1)) {
            throw new IllegalArgumentException("The share of classes that keep the plan must be above 0 and below 1, not " + promise);
        }
        Objects.requireNonNull(pacing, "pacing");
        room = withSomebody(room, steps, helpers);
    }

    /** Where somebody stays beside students, there are the tutor and the helpers to do so. */
    private static List<RoomTool> withSomebody(List<RoomTool> room, List<Step> steps, int helpers) {
        Stream<RoomTool> tools = room.stream().filter(tool -> !tool.name().equals(Step.Make.SOMEBODY.tool()));
        boolean asked = steps.stream().anyMatch(step -> step instanceof Step.Make make && make.beside());
        return Stream.concat(tools, asked ? Stream.of(new RoomTool(Step.Make.SOMEBODY.tool(), 1 + helpers)) : Stream.of()).toList();
    }

    /** Whether a step of it is over before the class begins, by its kind or because the tutor prepares it. */
    public boolean isAhead(Step step) {
        return step.kind().isBeforeClass() || preparedAhead.contains(step.id());
    }

    private static void atMost(int greatest, int value, String what) {
        if (value > greatest) {
            throw new IllegalArgumentException(what + " must be at most " + greatest + ", not " + value);
        }
    }

    /** Students of a group, which are numbered from 1; of group 0, all. The first groups have one more where they can't be equal. */
    public int members(int group) {
        return group == 0 ? headcount : headcount / groups + (group <= headcount % groups ? 1 : 0);
    }

    /** The seat of a group's first student, from 0. Groups sit side by side. */
    public int firstSeat(int group) {
        return group == 0 ? 0 : (group - 1) * (headcount / groups) + Math.min(group - 1, headcount % groups);
    }

    public StepsById stepsById() {
        return new StepsById(steps);
    }

    /** The links that lead on from a step. */
    public List<Link> after(String step) {
        return links.stream().filter(link -> link.from().equals(step)).toList();
    }

    /** How many of a tool there are in the room. */
    public int inRoom(String tool) {
        return room.stream().filter(one -> one.name().equals(tool)).mapToInt(RoomTool::count).sum();
    }

    /** How many loads of a wait's equipment can run side by side, 1 at least. */
    public int loadsAtOnce(Step.Wait wait) {
        return Math.max(1, wait.uses().stream().mapToInt(use -> inRoom(use.tool()) / use.units()).min().orElse(1));
    }

    /** How long a step that is not each student's own takes with so many students: all loads, and what each head adds. */
    public Duration length(Step step, int students) {
        if (step instanceof Step.Wait wait && wait.places() > 0) {
            long side = (long) wait.places() * loadsAtOnce(wait);
            return wait.least().multipliedBy((students + side - 1) / side);
        }
        return step.length().multipliedBy(step.showings(students)).plus(step.perStudent().multipliedBy(students));
    }

    /** Whether each group is shown it by itself: the class works in groups, and not all can watch at once or the tutor chooses so. */
    public boolean isShownToGroups(Step step) {
        return groups > 1 && step instanceof Step.Show show && (show.toGroups() || show.isTooCloseFor(headcount));
    }

    /** The beginning of the first meeting, from which the planners count. */
    public LocalDateTime start() {
        return meetings.get(0).start();
    }

    /** The end of the last meeting. */
    public LocalDateTime bookedEnd() {
        return meetings.get(meetings.size() - 1).end();
    }

    public static Builder builder() {
        return new Builder();
    }

    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.steps.addAll(steps);
        builder.links.addAll(links);
        builder.room.addAll(room);
        builder.meetings.addAll(meetings);
        builder.breaks.addAll(breaks);
        return builder.headcount(headcount).helpers(helpers).groups(groups).pacing(pacing)
                .preparedAhead(preparedAhead).notBefore(notBefore).searchFrom(searchFrom).promise(promise).seed(seed).replications(replications).timeLimit(timeLimit);
    }

    /** Collects a request; unset values are one student, no helper, one group, together, nine in ten, seed 1, 5,000 simulated classes, 2 seconds. */
    public static final class Builder {
        private final List<Step> steps = new ArrayList<>();
        private final List<Link> links = new ArrayList<>();
        private final List<RoomTool> room = new ArrayList<>();
        private final List<Meeting> meetings = new ArrayList<>();
        private final List<Break> breaks = new ArrayList<>();
        private Set<String> preparedAhead = Set.of();
        private Map<String, LocalDateTime> notBefore = Map.of();
        private List<Turn> searchFrom = List.of();
        private int headcount = 1;
        private int helpers;
        private int groups = 1;
        private Pacing pacing = Pacing.TOGETHER;
        private double promise = 0.9;
        private long seed = 1;
        private int replications = 5_000;
        private Duration timeLimit = Duration.ofSeconds(2);

        private Builder() {
        }

        public Builder step(Step step) {
            steps.add(step);
            return this;
        }

        public Builder steps(List<? extends Step> all) {
            steps.clear();
            steps.addAll(all);
            return this;
        }

        public Builder link(String from, String to) {
            return link(new Link(from, to));
        }

        public Builder link(Link link) {
            links.add(link);
            return this;
        }

        public Builder links(List<Link> all) {
            links.clear();
            links.addAll(all);
            return this;
        }

        public Builder tool(String name, int count) {
            room.add(new RoomTool(name, count));
            return this;
        }

        public Builder room(List<RoomTool> all) {
            room.clear();
            room.addAll(all);
            return this;
        }

        public Builder headcount(int students) {
            headcount = students;
            return this;
        }

        public Builder helpers(int people) {
            helpers = people;
            return this;
        }

        public Builder groups(int number) {
            groups = number;
            return this;
        }

        public Builder pacing(Pacing kind) {
            pacing = kind;
            return this;
        }

        public Builder meeting(LocalDateTime start, LocalDateTime end) {
            meetings.add(new Meeting(start, end));
            return this;
        }

        public Builder meetings(List<Meeting> all) {
            meetings.clear();
            meetings.addAll(all);
            return this;
        }

        public Builder pause(String title, LocalDateTime start, LocalDateTime end) {
            breaks.add(new Break(title, start, end));
            return this;
        }

        public Builder breaks(List<Break> all) {
            breaks.clear();
            breaks.addAll(all);
            return this;
        }

        public Builder preparedAhead(Set<String> steps) {
            preparedAhead = Set.copyOf(steps);
            return this;
        }

        public Builder notBefore(Map<String, LocalDateTime> times) {
            notBefore = Map.copyOf(times);
            return this;
        }

        public Builder searchFrom(List<Turn> order) {
            searchFrom = List.copyOf(order);
            return this;
        }

        public Builder promise(double share) {
            promise = share;
            return this;
        }

        public Builder seed(long value) {
            seed = value;
            return this;
        }

        public Builder replications(int number) {
            replications = number;
            return this;
        }

        public Builder timeLimit(Duration limit) {
            timeLimit = limit;
            return this;
        }

        public LessonRequest build() {
            return new LessonRequest(steps, links, room, headcount, helpers, groups, pacing, meetings, breaks, preparedAhead,
                    notBefore, searchFrom, promise, seed, replications, timeLimit);
        }
    }

    /**
     * A step, or one group's share of it.
     *
     * @param group 0 where the whole class does it, else the group from 1
     */
    public record Turn(String step, int group) {
        private static final Pattern WRITTEN = Pattern.compile("(\\w+)(?:/(\\d{1,3}))?");

        /** Reads {@link #written(List)}; what is no turn is passed over. */
        public static List<Turn> read(String order) {
            return Arrays.stream(order.strip().split("\\s+")).flatMap(Turn::of).toList();
        }

        /** "cut/1 cut/2 glue", from first to last. */
        public static String written(List<Turn> order) {
            return order.stream().map(turn -> turn.group == 0 ? turn.step : turn.step + "/" + turn.group).collect(Collectors.joining(" "));
        }

        private static Stream<Turn> of(String word) {
            Matcher turn = WRITTEN.matcher(word);
            return turn.matches() ? Stream.of(new Turn(turn.group(1), turn.group(2) == null ? 0 : Integer.parseInt(turn.group(2)))) : Stream.empty();
        }
    }

    /** Steps by their identifiers, for whoever knows that a step is there. */
    public static final class StepsById {
        private final Map<String, Step> steps;

        /** @param steps of which the first counts where two are called alike */
        public StepsById(List<Step> steps) {
            this.steps = steps.stream().collect(Collectors.toMap(Step::id, Function.identity(), (first, other) -> first));
        }

        public boolean has(String id) {
            return steps.containsKey(id);
        }

        /** @throws NoSuchElementException where there is none */
        public Step get(String id) {
            return Optional.ofNullable(steps.get(id)).orElseThrow(() -> new NoSuchElementException("There is no step \"" + id + "\"."));
        }
    }
}
