package benchful.plans;

import benchful.classes.ClassSetup;
import benchful.projects.ProjectSheet;
import benchful.projects.Size;
import benchful.web.Pointers;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Smaller sizes for the students whose pieces take the longest: what a tutor can offer when the hours are short. */
final class SmallerSizes {
    private static final int MOST_OFFERED = 3;

    private final ProjectSheet project;
    private final ClassSetup setup;
    private final Map<String, BigDecimal> work = new LinkedHashMap<>();

    private SmallerSizes(ClassFile file) {
        this.project = file.project();
        this.setup = file.setup();
        project.sizes().forEach(size -> work.put(size.name(), seconds(size)));
    }

    /** By the title of the change, the sizes nearest to the largest first; none where all make the quickest one already. */
    static Map<String, WhatIf> of(ClassFile file) {
        SmallerSizes smaller = new SmallerSizes(file);
        Map<String, WhatIf> changes = new LinkedHashMap<>();
        smaller.offered().forEach(size -> changes.put("Make “" + size + "” the largest size", smaller.largest(size)));
        return changes;
    }

    private List<String> offered() {
        BigDecimal largest = work.keySet().stream().filter(this::isMade).map(work::get).max(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
        return work.keySet().stream().filter(size -> work.get(size).compareTo(largest) < 0)
                .sorted(Comparator.comparing((String size) -> work.get(size)).reversed()).limit(MOST_OFFERED).toList();
    }

    private boolean isMade(String size) {
        return setup.sizes().getOrDefault(size, 0) > 0 || setup.students().stream().anyMatch(s -> size.equals(s.size()))
                || size.equals(first()) && unspokenFor() > 0;
    }

    private WhatIf largest(String size) {
        Map<String, String> fields = new LinkedHashMap<>();
        int moved = setup.sizes().getOrDefault(size, 0) + (isBigger(first(), size) ? unspokenFor() : 0);
        for (Map.Entry<String, Integer> mixed : setup.sizes().entrySet()) {
            if (isBigger(mixed.getKey(), size)) {
                moved += mixed.getValue();
                fields.put(Pointers.below("/sizes", mixed.getKey()), "");
            }
        }
        if (moved > 0) {
            fields.put(Pointers.below("/sizes", size), String.valueOf(moved));
        }
        for (int i = 0; i < setup.students().size(); i++) {
            String theirs = setup.students().get(i).size();
            if (isBigger(theirs == null ? first() : theirs, size)) {
                fields.put("/students/" + i + "/size", size);
            }
        }
        return new WhatIf(fields);
    }

    private boolean isBigger(String one, String other) {
        return work.getOrDefault(one, BigDecimal.ZERO).compareTo(work.get(other)) > 0;
    }

    private String first() {
        return project.sizes().get(0).name();
    }

    /** Students for whom no size is given, who take the first. */
    private int unspokenFor() {
        long named = setup.students().stream().filter(s -> s.size() != null).count();
        int mixed = setup.sizes().values().stream().mapToInt(Integer::intValue).sum();
        return (int) Math.max(0, setup.headcount() - Math.max(named, mixed));
    }

    /** What one student usually needs for all make steps of a piece. */
    private BigDecimal seconds(Size size) {
        Map<String, BigDecimal> repeats = PieceSizer.size(project, size).repeats();
        return project.steps().stream().filter(s -> s.student() != null)
                .map(s -> repeats.getOrDefault(s.id(), BigDecimal.ONE).multiply(BigDecimal.valueOf(s.student().usual().toSeconds())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
