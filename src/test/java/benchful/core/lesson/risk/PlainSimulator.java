package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A second simulation of a class, which shares no code with the program's: objects and a queue of what happens next, in clock time
 * throughout. A talk runs over by the lesser of two even draws, each time. What is shown to a group is one of the things its students go to. It knows waits without equipment and no greatest gaps, and of several meetings only what waits for work outside them.
 */
final class PlainSimulator {

    private final LessonRequest request;
    private final List<Block> blocks;
    private final Map<String, Step> steps;
    private final List<ClosedTime> closed;
    private final Map<StudentTime, double[]> times = new HashMap<>();
    private final Random random;

    PlainSimulator(LessonRequest request, LessonPlan plan, long seed) {
        this.request = request;
        this.blocks = plan.blocks();
        this.steps = request.steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
        this.closed = ClosedTime.of(request);
        this.random = new Random(seed);
    }

    private static final class Student {
        int seat;
        double pace;
        List<Block> todo = new ArrayList<>();
        int next;
        double left;
        final Map<String, Double> done = new HashMap<>();
    }

    /** Who are free at the same time go on in the order of their seats. */
    private record Event(double time, int seat, Runnable what) {
    }

    /** When one drawn class ends [s from its start]. */
    double finish() {
        List<Student> students = IntStream.range(0, request.headcount()).mapToObj(seat -> {
            Student student = new Student();
            student.seat = seat;
            student.pace = random.nextGaussian();
            return student;
        }).toList();
        double now = 0;
        double finish = 0;
        List<Block> bench = new ArrayList<>();
        for (Block block : blocks) {
            Step step = steps.get(block.step());
            if (step instanceof Step.Make || step instanceof Step.Show && block.group() > 0) {
                bench.add(block);
            } else if (step instanceof Step.Show || step instanceof Step.Together) {
                now = new Bench(students, bench, now).play();
                bench.clear();
                double ready = now;
                for (Student student : students) {
                    ready = Math.max(ready, ready(step.id(), student));
                }
                double length = talk(step, request.headcount());
                now = whole(ready, length) + length;
                for (Student student : students) {
                    student.done.put(step.id(), now);
                }
            } else if (step instanceof Step.Outside outside) {
                now = new Bench(students, bench, now).play();
                bench.clear();
                outside(outside, students);
            }
            finish = Math.max(finish, now);
        }
        now = new Bench(students, bench, now).play();
        for (Block block : blocks) {
            if (steps.get(block.step()) instanceof Step.Wait wait && !wait.endsAtHome()) {
                for (Student student : students) {
                    finish = Math.max(finish, ready(wait.id(), student) + wait.least().toSeconds());
                }
            }
        }
        return Math.max(finish, now);
    }

    private double talk(Step step, int students) {
        int times = step instanceof Step.Show show && show.watchers() > 0 ? (students - 1) / show.watchers() + 1 : 1;
        return times * step.length().toSeconds() + students * step.perStudent().toSeconds()
                + IntStream.range(0, times).mapToDouble(time -> Math.min(random.nextDouble(), random.nextDouble()) * step.over().toSeconds()).sum();
    }

    /** For all pieces at once, where no meeting is in the way. */
    private void outside(Step.Outside step, List<Student> students) {
        double start = students.stream().mapToDouble(student -> ready(step.id(), student)).max().orElseThrow();
        double length = request.length(step, request.headcount()).toSeconds();
        for (Meeting meeting : request.meetings()) {
            double from = Duration.between(request.start(), meeting.start()).toSeconds();
            double to = Duration.between(request.start(), meeting.end()).toSeconds();
            start = from < start + length && start < to ? to : start;
        }
        double end = start + length;
        students.forEach(student -> student.done.put(step.id(), end));
    }

    /** When all is over that a step follows, for one student's piece. */
    private double ready(String step, Student student) {
        double ready = 0;
        for (Link link : request.links()) {
            if (link.to().equals(step)) {
                double over = steps.get(link.from()) instanceof Step.Wait wait ? ready(wait.id(), student) + wait.least().toSeconds()
                        : student.done.getOrDefault(link.from(), 0.0);
                ready = Math.max(ready, over + link.least().toSeconds());
            }
        }
        return ready;
    }

    /** The time at which so much has been worked, breaks left out. */
    private double worked(double from, double work) {
        double start = open(from);
        double end = start + work;
        for (ClosedTime pause : closed) {
            end += start <= pause.from() && pause.from() < end ? pause.to() - pause.from() : 0;
        }
        return end;
    }

    private double open(double time) {
        double open = time;
        for (ClosedTime pause : closed) {
            open = pause.from() <= open && open < pause.to() ? pause.to() : open;
        }
        return open;
    }

    private double whole(double from, double length) {
        double start = from;
        for (ClosedTime pause : closed) {
            start = start < pause.to() && start + length > pause.from() ? pause.to() : start;
        }
        return start;
    }

    private double drawn(Student student, Step.Make make) {
        double[] table = times.computeIfAbsent(make.time(), PlainSimulator::table);
        double z = Math.sqrt(0.5) * (student.pace + random.nextGaussian());
        double place = NormalDistribution.of(0, 1).cumulativeProbability(z) * (table.length - 1);
        int cell = Math.min(table.length - 2, (int) place);
        return (table[cell] + (place - cell) * (table[cell + 1] - table[cell])) * make.time().scale(student.seat);
    }

    /** Two thousand quantiles of the three-point beta distribution [s]. */
    private static double[] table(StudentTime time) {
        double a = time.quick().toSeconds();
        double b = time.slow().toSeconds();
        double[] table = new double[2001];
        double mean = (a + 4.0 * time.usual().toSeconds() + b) / 6;
        double mu = b > a ? (mean - a) / (b - a) : 0.5;
        double nu = 36 * mu * (1 - mu) - 1;
        for (int i = 0; i < table.length; i++) {
            table[i] = b > a ? a + (b - a) * BetaDistribution.of(mu * nu, (1 - mu) * nu).inverseCumulativeProbability(i / 2000.0) : a;
        }
        return table;
    }

    /** Students at make steps until enough have finished each of them. */
    private final class Bench {
        private final List<Student> students;
        private final List<Block> parts;
        private final double begin;
        private final PriorityQueue<Event> events = new PriorityQueue<>(Comparator.comparingDouble(Event::time).thenComparing(Event::seat));
        private final Map<Block, Integer> finished = new HashMap<>();
        private final Map<String, Integer> free = new HashMap<>();
        private final List<Student> forTools = new ArrayList<>();
        private final Deque<Student> forHelp = new ArrayDeque<>();
        private final List<Student> forOthers = new ArrayList<>();
        private final List<Student> working = new ArrayList<>();
        private final List<Student> helped = new ArrayList<>();
        /** What is shown to a group that is there for it, with how long it will take. */
        private final Map<Block, Double> gathered = new LinkedHashMap<>();
        private final Map<Block, Double> begins = new HashMap<>();
        private final List<Block> forTutor = new ArrayList<>();
        private boolean showing;
        private int people = 1 + request.helpers();
        private int open;
        private double now;

        Bench(List<Student> students, List<Block> parts, double begin) {
            this.students = students;
            this.parts = List.copyOf(parts);
            this.begin = begin;
            this.now = begin;
            this.open = parts.size();
            request.room().forEach((RoomTool tool) -> free.merge(tool.name(), tool.count(), Integer::sum));
        }

        double play() {
            for (Student student : students) {
                student.todo = parts.stream().filter(part -> part.group() == 0 || isIn(student, part.group())).toList();
                student.next = 0;
                if (!parts.isEmpty()) {
                    goOn(student);
                }
            }
            for (int group = 1; request.groups() > 1 && group <= request.groups() && !parts.isEmpty(); group++) {
                gather(group);
            }
            while (open > 0) {
                Event event = events.remove();
                now = event.time();
                event.what().run();
            }
            for (Student student : students) {
                student.todo.forEach(part -> student.done.putIfAbsent(part.step(), now));
            }
            return parts.isEmpty() ? begin : now;
        }

        private boolean isIn(Student student, int group) {
            return request.firstSeat(group) <= student.seat && student.seat < request.firstSeat(group) + request.members(group);
        }

        private void at(double time, Student student, Runnable what) {
            events.add(new Event(time, student.seat, what));
        }

        private void goOn(Student student) {
            if (student.next == student.todo.size()) {
                return;
            }
            if (isShown(student.todo.get(student.next))) {
                return;
            }
            if (request.pacing() == Pacing.TOGETHER && student.next > 0 && !isOver(student.todo.get(student.next - 1))) {
                forOthers.add(student);
            } else {
                at(Math.max(now, ready(student.todo.get(student.next).step(), student)), student, () -> take(student));
            }
        }

        private boolean isShown(Block part) {
            return steps.get(part.step()) instanceof Step.Show;
        }

        private List<Student> members(int group) {
            return students.stream().filter(student -> isIn(student, group)).toList();
        }

        /** Where all that comes before is over for as many as must, the group leaves it and watches. */
        private void gather(int group) {
            List<Block> todo = members(group).get(0).todo;
            Block show = todo.stream().filter(part -> isShown(part) && !gathered.containsKey(part)).findFirst().orElse(null);
            if (show == null || !todo.subList(0, todo.indexOf(show)).stream().allMatch(this::isOver)) {
                return;
            }
            gathered.put(show, talk(steps.get(show.step()), members(group).size()));
            List<Student> late = members(group).stream().filter(student -> student.next < todo.indexOf(show)).toList();
            forTools.removeAll(late);
            forHelp.removeAll(late);
            forOthers.removeAll(late);
            late.forEach(student -> stop(student, todo.indexOf(show)));
            if (!late.isEmpty()) {
                takeInTurn();
            }
            double ready = members(group).stream().mapToDouble(student -> ready(show.step(), student)).max().orElseThrow();
            await(show, Math.max(now, ready));
        }

        private void stop(Student student, int place) {
            events.removeIf(event -> event.seat() == student.seat);
            List<ToolUse> held = working.remove(student) ? make(student).uses() : List.of();
            boolean beside = !held.isEmpty() && make(student).beside();
            student.todo.subList(student.next, place).forEach(part -> student.done.put(part.step(), now));
            student.next = place;
            held.forEach(use -> free.merge(use.tool(), use.units(), Integer::sum));
            if (helped.remove(student) || beside) {
                goElsewhere();
            }
        }

        private void await(Block show, double time) {
            double begin = whole(time, gathered.get(show));
            begins.put(show, begin);
            at(begin, members(show.group()).get(0), () -> show(show));
        }

        private void show(Block show) {
            boolean another = begins.entrySet().stream().anyMatch(other -> other.getValue() == now && blocks.indexOf(other.getKey()) < blocks.indexOf(show));
            if (people == 0 || showing || another) {
                begins.remove(show);
                forTutor.add(show);
            } else {
                begin(show);
            }
        }

        private void begin(Block show) {
            begins.remove(show);
            people--;
            showing = true;
            at(now + gathered.get(show), members(show.group()).get(0), () -> {
                finished.put(show, members(show.group()).size());
                open--;
                for (Student student : members(show.group())) {
                    student.done.put(show.step(), now);
                    student.next++;
                    goOn(student);
                }
                gather(show.group());
                showing = false;
                goElsewhere();
                takeInTurn();
            });
        }

        private boolean isOver(Block part) {
            if (isShown(part)) {
                return finished.containsKey(part);
            }
            Step.Make make = (Step.Make) steps.get(part.step());
            return finished.getOrDefault(part, 0) >= Math.max(1, Math.ceil(make.finishShare() * request.members(part.group()) - 1e-9));
        }

        private Step.Make make(Student student) {
            return (Step.Make) steps.get(student.todo.get(student.next).step());
        }

        private void take(Student student) {
            List<ToolUse> uses = make(student).uses();
            boolean nobody = make(student).beside() && people == 0;
            if (nobody || uses.stream().anyMatch(use -> free.get(use.tool()) < use.units())) {
                forTools.add(student);
                return;
            }
            uses.forEach(use -> free.merge(use.tool(), -use.units(), Integer::sum));
            people -= make(student).beside() ? 1 : 0;
            student.left = drawn(student, make(student));
            working.add(student);
            work(student);
        }

        private void work(Student student) {
            double calls = make(student).help().isNone() ? 0 : make(student).help().callsPerStudentHour() / 3600;
            double until = calls == 0 ? Double.MAX_VALUE : -Math.log(1 - random.nextDouble()) / calls;
            if (until < student.left) {
                student.left -= until;
                at(worked(now, until), student, () -> call(student));
            } else {
                at(worked(now, student.left), student, () -> finish(student));
            }
        }

        private void call(Student student) {
            if (people == 0) {
                forHelp.add(student);
                return;
            }
            people--;
            helped.add(student);
            double length = -Math.log(1 - random.nextDouble()) * make(student).help().minutesPerCall() * 60;
            at(worked(now, length), student, () -> {
                helped.remove(student);
                student.left = Math.max(0, student.left - length);
                work(student);
                goElsewhere();
                takeInTurn();
            });
        }

        /** To the group that waits, or to who called, or else to whoever waits for somebody beside. */
        private void goElsewhere() {
            people++;
            forTutor.sort(Comparator.comparing(blocks::indexOf));
            while (!showing && !forTutor.isEmpty()) {
                Block show = forTutor.remove(0);
                if (whole(now, gathered.get(show)) > now) {
                    await(show, now);
                } else {
                    begin(show);
                }
            }
            if (people > 0 && !forHelp.isEmpty()) {
                call(forHelp.remove());
            }
        }

        private void takeInTurn() {
            List<Student> line = List.copyOf(forTools);
            forTools.clear();
            line.forEach(this::take);
        }

        private void finish(Student student) {
            Block part = student.todo.get(student.next);
            boolean beside = make(student).beside();
            make(student).uses().forEach(use -> free.merge(use.tool(), use.units(), Integer::sum));
            working.remove(student);
            student.done.put(part.step(), now);
            student.next++;
            boolean before = isOver(part);
            finished.merge(part, 1, Integer::sum);
            if (isOver(part) && !before) {
                open--;
                List<Student> waiting = forOthers.stream().filter(other -> other.todo.get(other.next - 1).equals(part)).toList();
                forOthers.removeAll(waiting);
                waiting.forEach(this::goOn);
            }
            goOn(student);
            if (beside) {
                goElsewhere();
            }
            takeInTurn();
            if (part.group() > 0) {
                gather(part.group());
            }
        }
    }
}
