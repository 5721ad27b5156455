package benchful.findings;

import benchful.classes.ClassFile;
import benchful.core.day.HandsUp.Asked;
import benchful.core.learning.CallRate;
import benchful.core.learning.CallRate.Seen;
import benchful.core.lesson.StepKind;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What classes in which hands were counted show of the calls for help at each step. */
final class Helps {
    /** A call of a project that says of none how long it lasts (common practice, no source). */
    private static final Duration USUAL_CALL = Duration.ofMinutes(2);

    private static final double HOUR = 3600;

    private final ProjectSpec project;
    private final List<Reviewed> reviewed;
    private final History history;
    private final LocalDate today;
    private final List<HelpFinding> findings;

    Helps(ProjectSpec project, List<Reviewed> reviewed, History history, LocalDate today) {
        this.project = project;
        this.reviewed = reviewed;
        this.history = history;
        this.today = today;
        this.findings = project.steps().stream().filter(s -> s.kind() == StepKind.MAKE).map(s -> finding(s, seen(s))).filter(f -> f.classes() > 0).toList();
    }

    /** In the order of the project. */
    List<HelpFinding> findings() {
        return findings;
    }

    /** By the review that tells it. */
    private Map<String, Seen> seen(Step step) {
        Map<String, Seen> seen = new LinkedHashMap<>();
        for (Reviewed one : reviewed) {
            Asked asked = one.asked().get(step.id());
            if (asked != null && !asked.atWork().isZero()) {
                double level = one.file().setup().level().callsAgainst(project.timesOf());
                seen.put("%s:asked-%d".formatted(one.evidence(), asked.calls()), new Seen(one.day(), asked.calls(), asked.atWork().toSeconds() / HOUR * level));
            }
        }
        return seen;
    }

    private HelpFinding finding(Step step, Map<String, Seen> seen) {
        Setting now = Setting.help(step.help());
        Setting typed = history.typed(HelpFinding.key(step), now);
        String evidence = seen.keySet().stream().sorted().collect(Collectors.joining(" "));
        CallRate rate = CallRate.of(List.copyOf(seen.values()), typed.help().calls().doubleValue(), today);
        return new HelpFinding(step, typed.help().lasts().isZero() ? Setting.help(new Step.Help(typed.help().calls(), usualCall())) : typed, rate, evidence,
                history.refused(HelpFinding.key(step), now, evidence));
    }

    /** The middle one of the project. */
    private Duration usualCall() {
        List<Duration> typed = project.steps().stream().filter(s -> s.help() != null && !s.help().lasts().isZero()).map(s -> s.help().lasts()).sorted().toList();
        return typed.isEmpty() ? USUAL_CALL : typed.get(typed.size() / 2);
    }

    /** A class as it was, but that its students ask as often as they are likely to: waiting for help is then no step's own time. */
    ClassFile in(ClassFile file) {
        Map<String, HelpFinding> known = findings.stream().collect(Collectors.toMap(f -> f.step().id(), Function.identity()));
        return known.isEmpty() ? file
                : file.with(file.project().withSteps(file.project().steps().stream().map(s -> known.containsKey(s.id()) ? s.withHelp(known.get(s.id()).likely()) : s).toList()));
    }
}
