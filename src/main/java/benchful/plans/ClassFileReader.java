package benchful.plans;

import benchful.catalogue.HazardNames;
import benchful.catalogue.MaterialRules;
import benchful.catalogue.SupplierRules;
import benchful.classes.ClassFile;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.projects.ProjectRules;
import benchful.web.forms.SpecReader;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Reads class files: the schema first, then the rules of the project, of the setup, and of both with the catalogue. */
@ApplicationScoped
public class ClassFileReader {
    private final SpecReader<ClassFile> reader;

    public ClassFileReader(HazardNames hazards) {
        reader = new SpecReader<>(ClassFile.class, ClassFileReader::faults).and(file -> unknownHazards(file, hazards.byId().keySet()));
    }

    public SpecReader.Reading<ClassFile> read(byte[] file) {
        return reader.file(file);
    }

    /** The file as YAML, ready for {@code POST /api/plan}. */
    public String yaml(ClassFile file) {
        return reader.yaml(file);
    }

    private static List<Fault> faults(ClassFile file) {
        List<Fault> faults = new ArrayList<>(below("/project", ProjectRules.faults(file.project())));
        each(faults, "/materials", file.materials(), MaterialRules::faults);
        each(faults, "/suppliers", file.suppliers(), SupplierRules::faults);
        if (faults.isEmpty()) {
            faults.addAll(below("/class", SetupRules.check(file.setup(), file.project())));
            file.project().sizes().forEach(s -> PieceSizer.size(file.project(), s).faults().stream()
                    .map(f -> new Fault("/project" + f.pointer(), "Size %s: %s".formatted(s.name(), f.detail())))
                    .forEach(faults::add));
        }
        return List.copyOf(faults);
    }

    private static List<Fault> unknownHazards(ClassFile file, Set<String> known) {
        List<Fault> faults = new ArrayList<>(below("/project", ProjectRules.unknownHazards(file.project(), known)));
        if (file.venue() != null) {
            faults.addAll(below("/venue", HazardNames.unknown("/hazards", file.venue().hazards(), known)));
        }
        each(faults, "/materials", file.materials(), material -> HazardNames.unknown("/hazards", material.hazards(), known));
        return faults;
    }

    private static <T> void each(List<Fault> faults, String list, List<T> sheets, Function<T, List<Fault>> rules) {
        for (int i = 0; i < sheets.size(); i++) {
            faults.addAll(below(list + "/" + i, rules.apply(sheets.get(i))));
        }
    }

    private static List<Fault> below(String place, List<Fault> faults) {
        return faults.stream().map(f -> new Fault(place + f.pointer(), f.detail())).toList();
    }
}
