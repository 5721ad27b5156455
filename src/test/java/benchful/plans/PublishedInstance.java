package benchful.plans;

import benchful.classes.ClassFile;
import benchful.core.lesson.LessonRequest;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Published scheduling instances written as class files of waits that hold equipment, one time unit a minute, and read as any
 * class file is.
 * Formats: PSPLIB single mode (.sm: Kolisch and Sprecher, EJOR 96, 1996) and ProGen/max (.sch: Schwindt; start-to-start lags,
 * a negative one from i to j meaning that i starts at most so long after j).
 */
public final class PublishedInstance {

    /** No least gap: longer than any instance. */
    private static final int FREE = -80_000;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<Integer> lengths = new ArrayList<>();
    private final List<int[]> demands = new ArrayList<>();
    private int[] capacity;
    private final Map<List<Integer>, Integer> least = new HashMap<>();
    private final Map<List<Integer>, Integer> greatest = new HashMap<>();
    private final List<int[]> lags = new ArrayList<>();

    private PublishedInstance() {
    }

    /** As any class file is read. */
    public static LessonRequest.Builder read(Path file) {
        try {
            return ClassPlanner.request(readAsClass(of(file).classFile())).toBuilder();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static PublishedInstance of(Path file) {
        try {
            PublishedInstance instance = new PublishedInstance();
            List<String> lines = Files.readAllLines(file);
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(".sm")) {
                instance.readSingleMode(lines);
            } else {
                instance.readLags(lines);
            }
            instance.lags.forEach(instance::addLag);
            return instance;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How long each job takes. */
    public List<Integer> lengths() {
        return List.copyOf(lengths);
    }

    /** What a job takes of each resource. */
    public int demand(int job, int resource) {
        return demands.get(job)[resource];
    }

    public int[] capacity() {
        return capacity.clone();
    }

    /** From a job, to another, and how long the other begins after it at least. */
    public List<int[]> lags() {
        return List.copyOf(lags);
    }

    private static ClassFile readAsClass(byte[] file) {
        if (BroughtHazards.reader().read(file) instanceof SpecReader.Read<ClassFile> read) {
            return read.sheet();
        }
        throw new IllegalArgumentException(((SpecReader.Faulty<ClassFile>) BroughtHazards.reader().read(file)).faults().toString());
    }

    private static int[] numbers(String line) {
        return Arrays.stream(line.replaceAll("[\\[\\]]", " ").trim().split("\\s+")).mapToInt(Integer::parseInt).toArray();
    }

    private void readSingleMode(List<String> lines) {
        int order = lines.indexOf("PRECEDENCE RELATIONS:") + 2;
        int requests = lines.indexOf("REQUESTS/DURATIONS:") + 3;
        int jobs = requests - 4 - order;
        for (int i = 0; i < jobs; i++) {
            int[] job = numbers(lines.get(requests + i));
            lengths.add(job[2]);
            demands.add(Arrays.copyOfRange(job, 3, job.length));
        }
        for (int i = 0; i < jobs; i++) {
            int[] row = numbers(lines.get(order + i));
            for (int k = 3; k < row.length; k++) {
                lags.add(new int[] {i, row[k] - 1, lengths.get(i)});
            }
        }
        capacity = numbers(lines.get(lines.indexOf("RESOURCEAVAILABILITIES:") + 2));
    }

    private void readLags(List<String> lines) {
        int jobs = numbers(lines.get(0))[0] + 2;
        for (int i = 0; i < jobs; i++) {
            int[] row = numbers(lines.get(1 + i));
            for (int k = 0; k < row[2]; k++) {
                lags.add(new int[] {i, row[3 + k], row[3 + row[2] + k]});
            }
            int[] job = numbers(lines.get(1 + jobs + i));
            lengths.add(job[2]);
            demands.add(Arrays.copyOfRange(job, 3, job.length));
        }
        capacity = numbers(lines.get(1 + 2 * jobs));
    }

    /** The class file, as anybody could write it for the planning API. */
    private byte[] classFile() throws IOException {
        ObjectNode file = JSON.createObjectNode();
        ObjectNode project = file.putObject("project").put("name", "Published instance").put("craft", "scheduling").put("level", "improver");
        project.putArray("sizes").addObject().put("name", "one");
        ArrayNode tools = project.putArray("tools");
        ObjectNode room = file.putObject("venue").put("name", "Room").putObject("tools");
        for (int r = 0; r < capacity.length; r++) {
            tools.addObject().put("name", "r" + r);
            room.put("r" + r, capacity[r]);
        }
        ArrayNode steps = project.putArray("steps");
        for (int i = 0; i < lengths.size(); i++) {
            addStep(steps.addObject(), i);
        }
        ObjectNode setup = file.putObject("class").put("headcount", 1).put("level", "improver");
        setup.putArray("meetings").addObject().put("date", "2027-03-06").put("starts", "10:00").put("ends", "11:00");
        return JSON.writeValueAsBytes(file);
    }

    private void addStep(ObjectNode step, int job) {
        step.put("id", "j" + job).put("title", "Job " + job).put("kind", "wait").put("lasts", lengths.get(job) + " min");
        ArrayNode uses = step.putArray("tools");
        for (int r = 0; r < capacity.length; r++) {
            if (demands.get(job)[r] > 0) {
                uses.addObject().put("tool", "r" + r).put("each", demands.get(job)[r]);
            }
        }
        ArrayNode after = step.putArray("after");
        Set<List<Integer>> pairs = new LinkedHashSet<>(least.keySet());
        pairs.addAll(greatest.keySet());
        pairs.stream().filter(pair -> pair.get(1) == job).forEach(pair -> {
            ObjectNode gap = after.addObject().put("step", "j" + pair.get(0)).put("least", least.getOrDefault(pair, FREE) + " min");
            if (greatest.containsKey(pair)) {
                gap.put("most", greatest.get(pair) + " min");
            }
        });
    }

    private void addLag(int[] lag) {
        if (lag[2] >= 0) {
            least.put(List.of(lag[0], lag[1]), lag[2] - lengths.get(lag[0]));
        } else {
            greatest.put(List.of(lag[1], lag[0]), -lag[2] - lengths.get(lag[1]));
        }
    }
}
