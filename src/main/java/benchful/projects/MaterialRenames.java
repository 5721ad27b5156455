package benchful.projects;

import benchful.catalogue.Material;
import benchful.web.Blanks;
import benchful.web.Renamed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;

/** Lets the lines and texts of projects follow when a material gets another name. */
@ApplicationScoped
class MaterialRenames {
    private final ProjectUses uses;
    private final Clock clock;

    MaterialRenames(ProjectUses uses, Clock clock) {
        this.uses = uses;
        this.clock = clock;
    }

    void follow(@Observes Renamed renamed) {
        if (renamed.kind() == Material.class) {
            uses.naming(renamed.from()).forEach(p -> p.replace(renamed(p.toSpec(), renamed), clock.instant()));
        }
    }

    private static ProjectSpec renamed(ProjectSpec sheet, Renamed renamed) {
        return sheet.withMaterials(sheet.materials().stream().map(line -> line.renamed(renamed.from(), renamed.to())).toList())
                .withSizes(sheet.sizes().stream().map(size -> size.renamed(renamed.from(), renamed.to())).toList())
                .withCare(text(sheet.care(), renamed))
                .withSteps(sheet.steps().stream().map(step -> step.withText(text(step.text(), renamed)).withLeftHanded(text(step.leftHanded(), renamed))).toList());
    }

    private static String text(String text, Renamed renamed) {
        return Blanks.renamed(text, renamed.from(), renamed.to());
    }
}
