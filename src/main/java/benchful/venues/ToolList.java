package benchful.venues;

import benchful.web.Uses.Use;
import io.quarkus.arc.Unremovable;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All tools by the names that rooms and projects call them. A room has a project's tool only where both write it alike, so
 * forms offer these names, and the list shows beside each other those that differ by a letter's case.
 */
@Named("tools")
@ApplicationScoped
@Unremovable
public class ToolList {
    private static final Comparator<String> BY_NAME = String.CASE_INSENSITIVE_ORDER.thenComparing(Comparator.naturalOrder());

    private final Instance<ToolNaming> features;

    ToolList(Instance<ToolNaming> features) {
        this.features = features;
    }

    /** A tool, with the rooms that have it and the projects that ask for it. */
    @TemplateData
    public record Row(String name, List<Use> uses) {}

    @Transactional
    public List<Row> rows() {
        return uses().entrySet().stream().map(tool -> new Row(tool.getKey(), tool.getValue())).toList();
    }

    /** For forms: names to choose from. */
    @Transactional
    public Collection<String> names() {
        return uses().keySet();
    }

    private SortedMap<String, List<Use>> uses() {
        SortedMap<String, List<Use>> all = new TreeMap<>(BY_NAME);
        features.forEach(feature -> feature.tools().forEach((name, uses) -> all.computeIfAbsent(name, n -> new ArrayList<>()).addAll(uses)));
        return all;
    }
}
