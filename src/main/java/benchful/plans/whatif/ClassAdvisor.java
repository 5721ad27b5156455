package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.core.Progress;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.advice.Advice;
import benchful.core.lesson.advice.Advisor;
import benchful.core.lesson.advice.BreakChanges;
import benchful.core.lesson.advice.Change;
import benchful.core.lesson.advice.HomeChanges;
import benchful.core.lesson.advice.Suggestion;
import benchful.core.lesson.risk.Promised;
import benchful.plans.ClassPlanner;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks the lesson engine what would help a class, and says each change in the fields of the class's setup. */
public final class ClassAdvisor {
    private final LessonPlanner lessons;
    private final ClassFile file;
    private final SpecReader<ClassSetup> reader;
    private final FormTree tree;
    private final JsonNode setup;

    public ClassAdvisor(LessonPlanner lessons, ClassFile file) {
        this.lessons = lessons;
        this.file = file;
        this.reader = SetupRules.reader(file.project());
        this.tree = new FormTree(reader.schema());
        this.setup = reader.written(file.setup());
    }

    /**
     * Takes seconds: tells how far it is and can be given up.
     *
     * @param request what the engine is asked for the class
     * @param now     the class as it is planned
     */
    public SuggestionList suggestions(LessonRequest request, Promised now, Progress progress) {
        Map<Change, WhatIf> smaller = smallerSizes();
        List<Change> others = Stream.of(smaller.keySet().stream(), breaks(request), HomeChanges.of(request, this::isHarmless).stream()).flatMap(changes -> changes).toList();
        Advice advice = new Advisor(lessons, new SetupCosts(file.setup())).advise(request, now, others, progress);
        return new SuggestionList(advice.chance(), Advice.ORDER, advice.suggestions().stream().map(s -> suggestion(s, smaller))
                .filter(s -> changed(s.whatIf()).isPresent()).toList(), advice.comfortable(), advice.complete());
    }

    /** Those at a fixed time; the others are where they hold up least already. */
    private Stream<Change> breaks(LessonRequest request) {
        return file.setup().breaks().stream().filter(b -> !b.mayMove()).map(ClassSetup.Break::at).distinct().flatMap(at -> BreakChanges.of(request, at).stream());
    }

    private boolean isHarmless(Step step) {
        return file.project().step(step.id()).filter(one -> one.hazards().isEmpty()).isPresent();
    }

    private Map<Change, WhatIf> smallerSizes() {
        Map<Change, WhatIf> changes = new LinkedHashMap<>();
        SmallerSizes.of(file).forEach((title, whatIf) -> changed(whatIf).ifPresent(smaller -> {
            List<Step> steps = ClassPlanner.request(smaller).steps();
            changes.put(new Change.Other(title, SmallerSizes.LOSES, request -> withSteps(request, steps)), whatIf);
        }));
        return changes;
    }

    private Optional<ClassFile> changed(WhatIf whatIf) {
        return reader.tree(whatIf.over(tree, setup)) instanceof SpecReader.Read<ClassSetup> read
                ? Optional.of(file.with(read.sheet())) : Optional.empty();
    }

    /** What is done at home stays there, and what is shown to groups is shown to them. */
    private static LessonRequest withSteps(LessonRequest request, List<Step> steps) {
        List<Step> all = steps.stream().map(step -> request.steps().stream().filter(now -> now.id().equals(step.id()) && (now.kind() == StepKind.HOMEWORK || now.kind() == StepKind.SHOW))
                .findFirst().orElse(step)).toList();
        return request.toBuilder().steps(all).build();
    }

    private SuggestionList.Suggestion suggestion(Suggestion s, Map<Change, WhatIf> smaller) {
        return new SuggestionList.Suggestion(s.title(), s.plan().finish(), s.plan().fits(), s.gained(), s.chance(), s.chanceGained(),
                s.preparation(), s.cost().orElse(null), s.asks(), s.loses(), SetupChange.of(s.changes(), tree, setup, file.onlyOwned(), smaller));
    }
}
