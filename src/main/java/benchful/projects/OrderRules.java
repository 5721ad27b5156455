package benchful.projects;

import benchful.core.lesson.StepKind;
import benchful.web.Formats;
import benchful.web.forms.FaultCollector;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether the steps can be done in some order: what they follow is there, gaps make sense, and nothing waits for itself. */
final class OrderRules {
    private final ProjectSpec project;
    private final FaultCollector faults;
    private final Map<String, Integer> places = new HashMap<>();

    private OrderRules(ProjectSpec project, FaultCollector faults) {
        this.project = project;
        this.faults = faults;
        for (int i = 0; i < project.steps().size(); i++) {
            places.putIfAbsent(project.steps().get(i).id(), i);
        }
    }

    static void check(ProjectSpec project, FaultCollector faults) {
        OrderRules rules = new OrderRules(project, faults);
        for (int i = 0; i < project.steps().size(); i++) {
            rules.links(i);
        }
        rules.circle();
    }

    private void links(int index) {
        Step step = project.steps().get(index);
        List<Step.After> after = ProjectSpec.copy(step.after());
        Set<String> named = new HashSet<>();
        for (int j = 0; j < after.size(); j++) {
            String at = "/steps/%d/after/%d".formatted(index, j);
            String id = after.get(j).step();
            faults.require(named.add(id), at + "/step", "“%s” is there twice in this step. Name it once.", id);
            if (faults.require(places.containsKey(id), at + "/step", "There is no step with the short name “%s”.", id)) {
                boolean beforeClass = project.steps().get(places.get(id)).kind().isBeforeClass();
                faults.require(!step.kind().isBeforeClass() || beforeClass, at + "/step",
                        "A step done ahead of the class can't follow “%s”, which is done in it.", id);
            }
            gap(at, step, after.get(j));
        }
        afterCollecting(index);
    }

    /** What is collected or posted comes after the last meeting. */
    private void afterCollecting(int index) {
        Step step = project.steps().get(index);
        project.predecessors(index).stream().filter(after -> step.kind().needsClass() && places.containsKey(after.step()))
                .map(after -> project.steps().get(places.get(after.step()))).filter(before -> before.kind() == StepKind.COLLECT)
                .forEach(before -> faults.add("/steps/%d/after".formatted(index),
                        "“%s” can't follow “%s”, which comes after the last meeting. Say what else it follows, or move it.", step.title(), before.title()));
    }

    private void gap(String at, Step step, Step.After after) {
        if (after.least() != null && after.most() != null) {
            faults.require(after.least().compareTo(after.most()) <= 0, at + "/most",
                    "The greatest gap between “%s” and “%s” can't be shorter than the least one, %s.", title(after.step()), step.title(),
                    Formats.words(after.least()));
        }
        for (Duration gap : new Duration[] {after.least(), after.most()}) {
            faults.require(gap == null || gap.abs().compareTo(Duration.ofDays(60)) <= 0, at + (gap == after.least() ? "/least" : "/most"),
                    "This gap is longer than 60 days.");
        }
    }

    private String title(String id) {
        return places.containsKey(id) ? project.steps().get(places.get(id)).title() : id;
    }

    /** Names one circle, if there is any, at the step that closes it. */
    private void circle() {
        Set<Integer> done = new HashSet<>();
        for (int i = 0; i < project.steps().size(); i++) {
            List<Integer> circle = circle(i, new ArrayList<>(), done);
            if (!circle.isEmpty()) {
                List<String> ids = circle.stream().map(s -> project.steps().get(s).id()).toList();
                faults.add("/steps/%d/after".formatted(backward(circle)),
                        "These steps wait for each other in a circle: %s. Take one of them out of “follows”.", String.join(" → ", ids));
                return;
            }
        }
    }

    /** Every circle holds a step that follows a later one of the sheet, or itself: the one to mend. */
    private static int backward(List<Integer> circle) {
        int i = 1;
        while (circle.get(i - 1) < circle.get(i)) {
            i++;
        }
        return circle.get(i);
    }

    /** @return the steps of a circle in the order they are done, first and last the same; empty where there is none */
    private List<Integer> circle(int step, List<Integer> path, Set<Integer> done) {
        if (path.contains(step)) {
            List<Integer> circle = new ArrayList<>(path.subList(path.indexOf(step), path.size()));
            circle.add(step);
            Collections.reverse(circle);
            return circle;
        }
        if (!done.add(step)) {
            return List.of();
        }
        path.add(step);
        for (Step.After after : project.predecessors(step).stream().filter(Step.After::follows).toList()) {
            List<Integer> circle = places.containsKey(after.step()) ? circle(places.get(after.step()), path, done) : List.of();
            if (!circle.isEmpty()) {
                return circle;
            }
        }
        path.remove(path.size() - 1);
        return List.of();
    }
}
