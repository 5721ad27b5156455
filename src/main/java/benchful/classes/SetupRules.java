package benchful.classes;

import benchful.core.Fault;
import benchful.core.lesson.StepKind;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Formats;
import benchful.web.forms.SpecReader;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What must agree within the setup of a class, and between it and its project. Each fault says where and how to mend it. */
public final class SetupRules {
    private static final Duration LEAST_WORK = Duration.ofMinutes(15);
    private static final Duration SHORTEST_REST = Duration.ofMinutes(3);
    private static final Duration LONGEST_REST = Duration.ofHours(2);

    private final ClassSetup setup;
    private final ProjectSpec project;
    private final List<Fault> faults = new ArrayList<>();

    private SetupRules(ClassSetup setup, ProjectSpec project) {
        this.setup = setup;
        this.project = project;
    }

    /** Reads a setup for the project from a form or a file. */
    public static SpecReader<ClassSetup> reader(ProjectSpec project) {
        return new SpecReader<>(ClassSetup.class, setup -> check(setup, project));
    }

    public static List<Fault> check(ClassSetup setup, ProjectSpec project) {
        SetupRules rules = new SetupRules(setup, project);
        rules.hours();
        rules.rest();
        rules.sizes();
        rules.students();
        rules.steps();
        rules.order();
        rules.times();
        rules.currency();
        rules.groups();
        rules.faults.addAll(ChoiceRules.faults(setup, project));
        return List.copyOf(rules.faults);
    }

    private void hours() {
        LocalDateTime last = null;
        for (int i = 0; i < setup.meetings().size(); i++) {
            ClassSetup.Meeting m = setup.meetings().get(i);
            if (!m.ends().isAfter(m.starts())) {
                fault("/meetings/" + i + "/ends", "The end (%s) must be later than the start (%s).".formatted(Formats.words(m.ends()), Formats.words(m.starts())));
            }
            if (last != null && m.date().atTime(m.starts()).isBefore(last)) {
                fault("/meetings/" + i + "/date", "Meeting %d must start after the one before it has ended.".formatted(i + 1));
            }
            last = m.date().atTime(m.ends());
        }
        for (int i = 0; i < setup.breaks().size(); i++) {
            ClassSetup.Break b = setup.breaks().get(i);
            if (b.latest() != null && b.latest().isBefore(b.at())) {
                fault("/breaks/" + i + "/latest", "It can't have to begin before %s. Give a later time, or none for a break at a fixed time.".formatted(Formats.words(b.at())));
            }
            isMeeting(b.meeting(), "/breaks/" + i + "/meeting");
        }
    }

    private void isMeeting(Integer number, String at) {
        if (number != null && number > setup.meetings().size()) {
            fault(at, "There is no meeting %d. The class has %d.".formatted(number, setup.meetings().size()));
        }
    }

    private void rest() {
        ClassSetup.Rest rest = setup.rest();
        isMeeting(rest == null ? null : rest.meeting(), "/rest/meeting");
        if (rest != null && rest.after().compareTo(LEAST_WORK) < 0) {
            fault("/rest/after", "Let them work for at least %s before a rest.".formatted(Formats.words(LEAST_WORK)));
        }
        if (rest != null && (rest.lasts().compareTo(SHORTEST_REST) < 0 || rest.lasts().compareTo(LONGEST_REST) > 0)) {
            fault("/rest/lasts", "Give a rest of %s to %s.".formatted(Formats.words(SHORTEST_REST), Formats.words(LONGEST_REST)));
        }
    }

    private void sizes() {
        setup.sizes().keySet().forEach(s -> known(s, "/sizes/" + s.replace("~", "~0").replace("/", "~1")));
        known(setup.demonstration(), "/demonstration");
        int mixed = setup.sizes().values().stream().mapToInt(Integer::intValue).sum();
        if (mixed > setup.headcount()) {
            fault("/headcount", "The sizes add up to %d pieces for %d students. Raise the one or lower the other."
                    .formatted(mixed, setup.headcount()));
        }
    }

    private void students() {
        if (setup.students().size() > setup.headcount()) {
            fault("/headcount", "%d students are named, but the class has %d. Raise the number or remove a name."
                    .formatted(setup.students().size(), setup.headcount()));
        }
        Set<String> seats = new HashSet<>();
        for (int i = 0; i < setup.students().size(); i++) {
            ClassSetup.Student s = setup.students().get(i);
            known(s.size(), "/students/" + i + "/size");
            if (s.seat() != null && !seats.add(s.seat())) {
                fault("/students/" + i + "/seat", "Seat %s is given twice. Give each student their own.".formatted(s.seat()));
            }
        }
    }

    private void known(String size, String pointer) {
        if (size != null && project.size(size).isEmpty()) {
            fault(pointer, "“%s” has no size “%s”. It has: %s.".formatted(project.name(), size,
                    project.sizes().stream().map(s -> s.name()).collect(Collectors.joining(", "))));
        }
    }

    private void steps() {
        for (int i = 0; i < setup.preparedAhead().size(); i++) {
            isStep(setup.preparedAhead().get(i), "/prepared_ahead/" + i);
        }
        for (int i = 0; i < setup.homework().size(); i++) {
            homework(setup.homework().get(i), "/homework/" + i);
        }
        for (int i = 0; i < setup.shownToGroups().size(); i++) {
            shown(setup.shownToGroups().get(i), "/shown_to_groups/" + i);
        }
    }

    private void shown(String id, String at) {
        if (isStep(id, at) && project.step(id).orElseThrow().kind() != StepKind.SHOW) {
            fault(at, "“%s” is not shown, so it can't be shown to a group at a time. Choose a demonstration.".formatted(project.step(id).orElseThrow().title()));
        }
    }

    private void homework(String id, String at) {
        if (isStep(id, at)) {
            Step step = project.step(id).orElseThrow();
            if (!step.kind().isOwnWork()) {
                fault(at, "“%s” is nothing that each student makes, so it can't be done at home. Choose another step.".formatted(step.title()));
            } else if (setup.preparedAhead().contains(id)) {
                fault(at, "“%s” is done by you before the class. Choose one of the two.".formatted(step.title()));
            }
        }
    }

    /** Whether the project has the step; a fault where it has not. */
    private boolean isStep(String id, String pointer) {
        boolean there = project.step(id).isPresent();
        if (!there) {
            fault(pointer, "“%s” has no step “%s”.".formatted(project.name(), id));
        }
        return there;
    }

    /** Her own order asks for nothing that the project forbids. */
    private void order() {
        List<String> order = setup.ownOrder();
        Set<String> sooner = new HashSet<>();
        for (int i = 0; i < order.size(); i++) {
            String step = order.get(i);
            String title = project.step(step).map(Step::title).orElse(step);
            if (!isStep(step, "/own_order/" + i)) {
                continue;
            }
            if (!project.step(step).orElseThrow().kind().needsClass()) {
                fault("/own_order/" + i, "“%s” is nothing that the class does, so it has no place in your order. Choose another step, or none.".formatted(title));
            } else if (order.indexOf(step) < i) {
                fault("/own_order/" + i, "“%s” stands in your order twice. Take it out here.".formatted(title));
            } else if (sooner.contains(step)) {
                fault("/own_order/" + i, "“%s” must come sooner, by what the project says of its steps. Move it up, or take it out of your order.".formatted(title));
            }
            before(step, sooner);
        }
    }

    private void times() {
        Set<String> asked = new HashSet<>();
        for (int i = 0; i < setup.ownTimes().size(); i++) {
            ClassSetup.OwnTime wish = setup.ownTimes().get(i);
            String at = "/own_times/" + i;
            if (isStep(wish.step(), at + "/step")) {
                step(project.step(wish.step()).orElseThrow(), at, asked);
            }
            isMeeting(wish.meeting(), at + "/meeting");
            setup.meetingOf(wish).filter(m -> !m.isOn(wish.at())).ifPresent(m -> fault(at + "/at",
                    "Meeting %d is from %s to %s. Give a time within it.".formatted(wish.index() + 1, Formats.words(m.starts()), Formats.words(m.ends()))));
        }
    }

    private void step(Step step, String at, Set<String> asked) {
        if (!step.kind().needsClass()) {
            fault(at + "/step", "“%s” is nothing that the class does, so it can't begin at a time of your own. Choose another step.".formatted(step.title()));
        } else if (!asked.add(step.id())) {
            fault(at + "/step", "“%s” has a time of your own already. Keep one of the two.".formatted(step.title()));
        }
    }

    /** All that the project has done before a step. */
    private void before(String step, Set<String> found) {
        for (int i = 0; i < project.steps().size(); i++) {
            if (project.steps().get(i).id().equals(step)) {
                project.predecessors(i).stream().filter(a -> a.least() == null || !a.least().isNegative()).map(Step.After::step).filter(found::add).forEach(b -> before(b, found));
            }
        }
    }

    private void currency() {
        boolean known = setup.currency() == null
                || Currency.getAvailableCurrencies().stream().anyMatch(c -> c.getCurrencyCode().equals(setup.currency()));
        if (!known) {
            fault("/currency", "“%s” is no currency. Give its three letters, such as GBP or EUR.".formatted(setup.currency()));
        }
    }

    private void groups() {
        if (setup.groups() > setup.headcount()) {
            fault("/groups", "%d students cannot be %d groups. Make fewer groups.".formatted(setup.headcount(), setup.groups()));
        }
    }

    private void fault(String pointer, String detail) {
        faults.add(new Fault(pointer, detail));
    }
}
