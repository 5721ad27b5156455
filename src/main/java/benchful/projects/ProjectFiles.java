package benchful.projects;

import benchful.catalogue.HazardNames;
import benchful.web.forms.SpecReader;
import java.util.Locale;

/** Projects as YAML files. */
public final class ProjectFiles {
    /** Reads projects from files and forms, with the rules that hold within a sheet. */
    public static final SpecReader<ProjectSpec> READER = new SpecReader<>(ProjectSpec.class, ProjectRules::faults);

    private ProjectFiles() {}

    /** Reads what a person brings or types, which may carry no hazard but the library's; what is stored already is read by {@link #READER}. */
    public static SpecReader<ProjectSpec> reader(HazardNames hazards) {
        return READER.and(sheet -> ProjectRules.unknownHazards(sheet, hazards.byId().keySet()));
    }

    /** A name for the file of a project: {@code knotted-strand.yaml}. */
    static String fileName(String project) {
        String name = project.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return (name.isEmpty() ? "project" : name) + ".yaml";
    }
}
