package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.risk.Script.Bench;
import benchful.core.lesson.risk.Script.CauseOf;
import benchful.core.lesson.risk.Script.Part;
import benchful.core.lesson.risk.Script.Stage;
import benchful.core.lesson.time.MeetingLinks;
import benchful.core.lesson.time.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Works a plan out as a {@link Script}. */
final class ScriptWriter {

    /** A tool is thought to be parted into so many shares, so that each of those who share it, up to eight, takes a whole number. */
    private static final int SHARES = 840;
    /** So that what is shown to one group does not run over just because it did with another. */
    private static final long GROUPS_APART = 1L << 32;

    private final LessonRequest request;
    private final LessonPlan plan;
    private final Clock clock;
    private final StepsById steps;
    private final List<String> tools;
    private final int[] counts;
    private final Prerequisites needs;
    private final MeetingLinks meetingLinks;
    private final Limits limits;

    ScriptWriter(LessonRequest request, LessonPlan plan) {
        this.request = request;
        this.plan = plan;
        this.clock = new Clock(request);
        this.steps = request.stepsById();
        Map<String, Integer> scarce = scarce();
        this.tools = List.copyOf(scarce.keySet());
        this.counts = scarce.values().stream().mapToInt(count -> count * SHARES).toArray();
        this.meetingLinks = new MeetingLinks(request);
        this.needs = new Prerequisites(request, plan, clock);
        this.limits = new Limits(request, plan);
    }

    /** Tools that not all students could use at once, whatever step they are at. */
    private Map<String, Integer> scarce() {
        Map<String, Integer> room = request.room().stream()
                .collect(Collectors.toMap(RoomTool::name, RoomTool::count, Integer::sum, TreeMap::new));
        Map<String, Integer> most = request.steps().stream().filter(step -> step.kind().isOwnWork()).flatMap(step -> step.uses().stream())
                .collect(Collectors.toMap(ToolUse::tool, use -> use.of(request.headcount()), Math::max));
        room.entrySet().removeIf(tool -> most.getOrDefault(tool.getKey(), 0) <= tool.getValue());
        return room;
    }

    Script script() {
        List<Part> parts = IntStream.range(0, plan.blocks().size()).mapToObj(this::part).toList();
        List<CauseOf> causes = new ArrayList<>(parts.stream().map(this::cause).toList());
        tools.forEach(tool -> causes.add(new CauseOf(Risk.Cause.TOOL, tool)));
        causes.add(new CauseOf(Risk.Cause.HELP, ""));
        int[] groups = IntStream.range(0, request.headcount()).map(this::groupOf).toArray();
        return new Script(plan, request.promise(), clock, parts, new Stages(parts).stages(), groups, counts, 1 + request.helpers(),
                request.pacing() == Pacing.TOGETHER, limits.all(), causes);
    }

    private CauseOf cause(Part part) {
        boolean wait = !steps.get(part.step()).kind().needsClass();
        return new CauseOf(wait ? Risk.Cause.DRYING : Risk.Cause.CLASS, part.title());
    }

    private int groupOf(int student) {
        return (int) IntStream.rangeClosed(1, request.groups()).filter(group -> request.firstSeat(group) <= student).count();
    }

    private Part part(int index) {
        Block block = plan.blocks().get(index);
        Step step = steps.get(block.step());
        double release = needs.release(index);
        int members = request.members(block.group());
        if (step instanceof Step.Make make) {
            Calls calls = Calls.of(make, request.headcount());
            int[] units = units(make);
            double whole = make.mayPause() ? 0 : block.length().toSeconds();
            return new Part(index, step.id(), step.title(), block.group(), false, true, release, whole, 0, 1, new PaceTable(Pace.of(make.time())),
                    make.time().scales(request.headcount()), limits.isTied(index), 0, 0,
                    calls.rate(), calls.answer(), make.mustFinish(members), members, units,
                    scarcest(units), make.beside() && tools.contains(Step.Make.SOMEBODY.tool()), needs.of(index), step.id().hashCode());
        }
        Step.Wait wait = step instanceof Step.Wait one ? one : null;
        double length = (wait == null ? request.length(step, members) : wait.least()).toSeconds();
        return new Part(index, step.id(), step.title(), block.group(), step.kind().isOutside(), meetingLinks.counts(step), release, length, step.over().toSeconds(), step.showings(members), null,
                new double[0], false, wait == null ? 0 : wait.places(), wait == null ? 0 : request.loadsAtOnce(wait), 0, 0, 0, members,
                new int[0], -1, false, needs.of(index), step.id().hashCode() + GROUPS_APART * block.group());
    }

    private int[] units(Step.Make make) {
        int[] units = new int[tools.size()];
        make.uses().stream().filter(use -> tools.contains(use.tool())).forEach(use -> units[tools.indexOf(use.tool())] += use.units() * SHARES / use.sharedBy());
        return units;
    }

    private int scarcest(int[] units) {
        return IntStream.range(0, units.length).filter(tool -> units[tool] > 0).boxed()
                .max(Comparator.comparingDouble(tool -> (double) units[tool] / counts[tool])).orElse(-1);
    }

    /** Cuts the plan into stages: benches between gatherings, and batches for which the benches behind them wait. */
    private final class Stages {
        private final List<Part> parts;
        private final List<Stage> stages = new ArrayList<>();
        private final List<Part> bench = new ArrayList<>();
        private final List<Part> batches = new ArrayList<>();
        private int cause = -1;

        Stages(List<Part> parts) {
            this.parts = parts;
        }

        List<Stage> stages() {
            parts.forEach(this::add);
            close(-1);
            return stages;
        }

        private void add(Part part) {
            StepKind kind = steps.get(part.step()).kind();
            if (kind.isOwnWork() || kind.needsClass() && part.group() > 0) {
                batches.stream().filter(batch -> part.needs().stream().anyMatch(need -> need.part() == batch.index())).findFirst()
                        .ifPresent(batch -> close(batch.index()));
                bench.add(part);
            } else if (!kind.needsClass()) {
                if (needs.isBatch(part.index())) {
                    batches.add(part);
                }
            } else {
                close(-1);
                stages.add(new Script.Gather(part.index()));
            }
        }

        private void close(int next) {
            if (!bench.isEmpty()) {
                int[][] lists = IntStream.rangeClosed(1, request.groups()).mapToObj(group -> bench.stream()
                        .filter(part -> part.group() == 0 || part.group() == group).mapToInt(Part::index).toArray()).toArray(int[][]::new);
                stages.add(new Bench(lists, bench.stream().mapToInt(Part::index).toArray(), cause));
            }
            bench.clear();
            batches.forEach(batch -> stages.add(new Script.Batch(batch.index())));
            batches.clear();
            cause = next;
        }
    }
}
