package benchful.plans.whatif;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.plans.materials.kits.Seat;
import benchful.plans.materials.kits.Seating;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.web.forms.JsonPointers;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Smaller sizes for the students whose pieces take the longest: what a tutor can offer when the hours are short. */
public final class SmallerSizes {
    private static final int MOST_OFFERED = 3;
    /** What it means for the students. */
    static final String LOSES = "Who chose a larger one makes this size";

    private final ProjectSpec project;
    private final ClassSetup setup;
    private final Seating seating;
    private final Map<String, BigDecimal> work = new LinkedHashMap<>();

    private SmallerSizes(ClassFile file) {
        this.project = file.project();
        this.setup = file.setup();
        this.seating = new Seating(project, setup);
        project.sizes().forEach(size -> work.put(size.name(), seconds(size)));
    }

    /** By the title of the change, the sizes nearest to the largest first; none where all make the quickest one already. */
    public static Map<String, WhatIf> of(ClassFile file) {
        SmallerSizes smaller = new SmallerSizes(file);
        Map<String, WhatIf> changes = new LinkedHashMap<>();
        smaller.offered().forEach(size -> changes.put("Make “" + size + "” the largest size", smaller.largest(size)));
        return changes;
    }

    private List<String> offered() {
        BigDecimal largest = seating.made().stream().map(work::get).max(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
        return work.keySet().stream().filter(size -> work.get(size).compareTo(largest) < 0)
                .sorted(Comparator.comparing((String size) -> work.get(size)).reversed()).limit(MOST_OFFERED).toList();
    }

    private WhatIf largest(String size) {
        Map<String, String> fields = new LinkedHashMap<>();
        List<Seat> seats = seating.students();
        int known = setup.students().size();
        for (int i = 0; i < known; i++) {
            if (isBigger(seats.get(i).size(), size)) {
                fields.put("/students/" + i + "/size", size);
            }
        }
        List<String> others = seats.subList(known, seats.size()).stream().map(Seat::size).toList();
        if (others.stream().anyMatch(theirs -> isBigger(theirs, size))) {
            setup.sizes().keySet().stream().filter(mixed -> isBigger(mixed, size)).forEach(mixed -> fields.put(JsonPointers.below("/sizes", mixed), ""));
            long moved = others.stream().filter(theirs -> theirs.equals(size) || isBigger(theirs, size)).count();
            fields.put(JsonPointers.below("/sizes", size), String.valueOf(moved));
        }
        return new WhatIf(fields);
    }

    private boolean isBigger(String one, String other) {
        return work.getOrDefault(one, BigDecimal.ZERO).compareTo(work.get(other)) > 0;
    }

    /** What one student usually needs for all make steps of a piece. */
    private BigDecimal seconds(Size size) {
        Map<String, BigDecimal> repeats = PieceSizer.size(project, size).repeats();
        return project.steps().stream().filter(s -> s.student() != null)
                .map(s -> repeats.getOrDefault(s.id(), BigDecimal.ONE).multiply(BigDecimal.valueOf(s.student().usual().toSeconds())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
