package benchful.findings;

import benchful.core.learning.TooFew;
import benchful.projects.ProjectSpec;
import benchful.projects.Tool;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What classes show of the tools that students waited for. */
final class Tools {
    private final ProjectSpec project;
    private final List<Reviewed> reviewed;
    private final History history;

    Tools(ProjectSpec project, List<Reviewed> reviewed, History history) {
        this.project = project;
        this.reviewed = reviewed;
        this.history = history;
    }

    /** In the order of the project. */
    List<ToolFinding> findings() {
        return project.tools().stream().map(Tool::name).distinct().map(this::finding).flatMap(Optional::stream).toList();
    }

    private Optional<ToolFinding> finding(String tool) {
        List<Reviewed> waited = reviewed.stream().filter(one -> one.waited().contains(tool)).toList();
        if (waited.isEmpty()) {
            return Optional.empty();
        }
        String evidence = waited.stream().map(one -> "%d:%s".formatted(one.craftClass(), tooFew(one, tool).map(t -> t.there() + "/" + t.students()).orElse("?"))).sorted()
                .collect(Collectors.joining(" "));
        TooFew atBest = TooFew.atBest(waited.stream().map(one -> tooFew(one, tool)).flatMap(Optional::stream).toList()).orElse(null);
        return Optional.of(ToolFinding.of(tool, waited.size(), atBest, evidence, history.refused(ToolFinding.key(tool), evidence)));
    }

    /** Nothing where nobody wrote down how many there were, where there were as many as can be in use, or nobody came. */
    private static Optional<TooFew> tooFew(Reviewed one, String tool) {
        Integer there = one.file().tools().get(tool);
        int students = Objects.requireNonNullElse(one.students(), one.file().setup().headcount());
        return there == null || there >= one.file().atOnce(tool) || students < 1 ? Optional.empty() : Optional.of(new TooFew(there, students));
    }
}
