package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.ToolUse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Published scheduling instances written as lessons of waits that hold equipment, one time unit a minute.
 * Formats: PSPLIB single mode (.sm: Kolisch and Sprecher, EJOR 96, 1996) and ProGen/max (.sch: Schwindt; start-to-start lags,
 * a negative one from i to j meaning that i starts at most so long after j).
 */
public final class PublishedInstance {

    private static final Duration FREE = Duration.ofMinutes(-1_000_000);

    private final List<Integer> lengths = new ArrayList<>();
    private final List<int[]> demands = new ArrayList<>();
    private int[] capacity;
    private final Map<List<Integer>, Duration> least = new HashMap<>();
    private final Map<List<Integer>, Duration> greatest = new HashMap<>();
    private final List<int[]> lags = new ArrayList<>();

    private PublishedInstance() {
    }

    public static LessonRequest.Builder read(Path file) {
        try {
            PublishedInstance instance = new PublishedInstance();
            List<String> lines = Files.readAllLines(file);
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(".sm")) {
                instance.readSingleMode(lines);
            } else {
                instance.readLags(lines);
            }
            return instance.lesson();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    private LessonRequest.Builder lesson() {
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(1));
        for (int r = 0; r < capacity.length; r++) {
            lesson.tool("r" + r, capacity[r]);
        }
        for (int i = 0; i < lengths.size(); i++) {
            lesson.step(new Step.Wait("j" + i, "Job " + i, Duration.ofMinutes(lengths.get(i)), Optional.empty(), uses(i), false));
        }
        lags.forEach(this::addLag);
        Set<List<Integer>> pairs = new LinkedHashSet<>(least.keySet());
        pairs.addAll(greatest.keySet());
        pairs.forEach(pair -> lesson.link(new Link("j" + pair.get(0), "j" + pair.get(1), least.getOrDefault(pair, FREE),
                Optional.ofNullable(greatest.get(pair)))));
        return lesson;
    }

    private List<ToolUse> uses(int job) {
        List<ToolUse> uses = new ArrayList<>();
        for (int r = 0; r < capacity.length; r++) {
            if (demands.get(job)[r] > 0) {
                uses.add(new ToolUse("r" + r, demands.get(job)[r]));
            }
        }
        return uses;
    }

    private void addLag(int[] lag) {
        if (lag[2] >= 0) {
            least.put(List.of(lag[0], lag[1]), Duration.ofMinutes(lag[2] - lengths.get(lag[0])));
        } else {
            greatest.put(List.of(lag[1], lag[0]), Duration.ofMinutes(-lag[2] - lengths.get(lag[1])));
        }
    }
}
