package benchful.findings;

import benchful.core.SkillLevel;
import benchful.core.learning.LevelPace;
import benchful.core.learning.StepPace.Seen;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What classes of one level show against those of the students whose times the project gives. A class in which students are of several
 * levels shows nothing of it, and of a project that was taught to one level only it can't be told from the steps' own minutes.
 */
final class Levels {
    private final ProjectSpec project;
    private final List<Shown> shown;
    private final Map<SkillLevel, LevelPace> paces = new EnumMap<>(SkillLevel.class);

    /** A class and what it showed of each step. */
    record Shown(Reviewed of, Map<String, Seen> steps) {
        private boolean isOf(SkillLevel level) {
            return of.file().setup().level() == level && of.file().setup().students().stream().allMatch(s -> s.level() == null || s.level() == level);
        }
    }

    Levels(ProjectSpec project, List<Shown> shown, LocalDate today) {
        this.project = project;
        this.shown = shown;
        Arrays.stream(SkillLevel.values()).filter(level -> level != project.timesOf())
                .forEach(level -> LevelPace.of(own(level), own(project.timesOf()), today).ifPresent(pace -> paces.put(level, pace)));
    }

    /** Of the steps that students do by themselves. */
    private List<Map<String, Seen>> own(SkillLevel level) {
        Set<String> own = project.steps().stream().filter(s -> s.student() != null).map(Step::id).collect(Collectors.toSet());
        return shown.stream().filter(s -> s.isOf(level)).map(s -> own(s, own)).toList();
    }

    private static Map<String, Seen> own(Shown shown, Set<String> own) {
        Map<String, Seen> steps = new LinkedHashMap<>(shown.steps());
        steps.keySet().retainAll(own);
        return steps;
    }

    Map<SkillLevel, LevelPace> paces() {
        return paces;
    }

    /** The reviews that tell of a level. */
    String evidence(SkillLevel level) {
        return Stream.of(level, project.timesOf()).flatMap(l -> shown.stream().filter(s -> s.isOf(l))).map(s -> s.of().evidence()).sorted().collect(Collectors.joining(" "));
    }

    /** What a class showed of a step's minutes, without what its level accounts for. */
    Seen ofStep(Shown one, Step step, Seen seen) {
        LevelPace pace = step.student() == null ? null : paces.get(one.of().file().setup().level());
        return pace == null || !one.isOf(one.of().file().setup().level()) ? seen : new Seen(seen.day(), seen.multiple() / pace.multiple(), seen.precision());
    }
}
