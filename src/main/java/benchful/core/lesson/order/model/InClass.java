package benchful.core.lesson.order.model;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What is left for the class when the steps done ahead are taken out, and which of it each group does on its own. */
final class InClass {

    private final List<Step> steps;
    private final List<Link> links;
    private final StepsById byId;
    private final Set<String> grouped = new HashSet<>();

    InClass(LessonRequest request) {
        steps = request.steps().stream()
                .filter(step -> !request.isAhead(step)).toList();
        byId = new StepsById(steps);
        links = bridged(request.links());
        if (request.groups() > 1) {
            steps.stream().filter(step -> step.kind().isOwnWork() || request.isShownToGroups(step)).forEach(step -> markGrouped(step.id()));
        }
    }

    /** What came before a step that is done ahead comes before what follows it. */
    private List<Link> bridged(List<Link> all) {
        List<Link> kept = new ArrayList<>(all);
        List<String> gone = all.stream().flatMap(link -> Stream.of(link.from(), link.to()))
                .filter(id -> !byId.has(id)).distinct().toList();
        for (String id : gone) {
            List<Link> in = kept.stream().filter(link -> link.to().equals(id)).toList();
            List<Link> out = kept.stream().filter(link -> link.from().equals(id)).toList();
            kept.removeAll(in);
            kept.removeAll(out);
            in.forEach(first -> out.forEach(second -> kept.add(new Link(first.from(), second.to()))));
        }
        return kept.stream().distinct().toList();
    }

    /** A make step is done by groups, as is what is shown to each of them, and so is a wait that follows what groups did. */
    private void markGrouped(String id) {
        if (grouped.add(id)) {
            after(id).stream().filter(link -> step(link.to()).kind().isUnattended()).forEach(link -> markGrouped(link.to()));
        }
    }

    List<Step> steps() {
        return steps;
    }

    List<Link> links() {
        return links;
    }

    Step step(String id) {
        return byId.get(id);
    }

    List<Link> after(String id) {
        return links.stream().filter(link -> link.from().equals(id)).toList();
    }

    /** A wait that follows nothing the class does, and whose pieces nobody but the tutor at work moves to other equipment. */
    boolean beginsByItself(Step.Wait wait) {
        List<StepKind> before = links.stream().filter(link -> link.to().equals(wait.id())).map(link -> step(link.from()).kind()).toList();
        boolean moved = wait.uses().isEmpty() || before.contains(StepKind.BETWEEN);
        return moved && !before.isEmpty() && before.stream().noneMatch(StepKind::needsClass);
    }

    boolean isGrouped(String id) {
        return grouped.contains(id);
    }
}
