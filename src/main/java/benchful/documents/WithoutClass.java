package benchful.documents;

import benchful.batches.BatchService;
import benchful.batches.KitBatch;
import benchful.catalogue.CatalogueSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.documents.parts.HazardNotes;
import benchful.documents.parts.PrintSource;
import benchful.hazards.HazardLibrary;
import benchful.plans.Remembered;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.kits.Kit;
import benchful.plans.stored.AvailableStock;
import benchful.projects.Project;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.studio.Studio;
import benchful.web.Formats;
import benchful.web.Unusable;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is printed though nobody meets: handouts of a project, and labels and instructions of kits for sale. */
@ApplicationScoped
class WithoutClass {
    private final BatchService batches;
    private final AvailableStock catalogue;
    private final Remembered remembered;
    private final HazardLibrary hazards;

    WithoutClass(BatchService batches, AvailableStock catalogue, Remembered remembered, HazardLibrary hazards) {
        this.batches = batches;
        this.catalogue = catalogue;
        this.remembered = remembered;
        this.hazards = hazards;
    }

    /** One piece of each size, at the pace of those whom the project suits. */
    @Transactional(dontRollbackOn = Unusable.class)
    PrintSource of(Project project) {
        return of(project.toFullSheet());
    }

    /** @param whole with the contents of its pictures */
    @Transactional(dontRollbackOn = Unusable.class)
    PrintSource of(ProjectSpec whole) {
        ClassFile file = file(whole);
        return source(file, remembered.needs(file), whole);
    }

    /** As a class of one student for each size. */
    @Transactional(dontRollbackOn = Unusable.class)
    ClassFile file(ProjectSpec whole) {
        ProjectSpec sheet = whole.withPictures(whole.pictures().stream().map(Picture::withoutContent).toList());
        CatalogueSpec there = catalogue.sheetsFor(null, sheet.materials().stream().flatMap(line -> line.offered().stream()).distinct().toList());
        Map<String, Integer> sizes = new LinkedHashMap<>();
        sheet.sizes().forEach(size -> sizes.put(size.name(), 1));
        ClassSetup nobody = ClassSetup.plain(null, List.of(), sheet.sizes().size(), sheet.level(), sizes, Studio.current().coin());
        return new ClassFile(sheet, nobody, null, there.materials(), there.suppliers());
    }

    /** The kits of a batch, nobody's in particular. */
    @Transactional(dontRollbackOn = Unusable.class)
    PrintSource of(KitBatch batch) {
        ClassFile file = batches.wholeFile(batch);
        Requirements needs = remembered.needs(file);
        LocalDate packed = batch.sheet().readyBy();
        return source(file, needs.withKits(needs.kits().stream().map(kit -> named(kit, batch.title())).toList()), batch.project().toFullSheet())
                .forSale("Batch %d%s".formatted(batch.id(), packed == null ? "" : ", packed on " + Formats.words(packed)));
    }

    @Transactional
    PrintSource source(ClassFile file, Requirements needs, ProjectSpec whole) {
        Map<String, Picture> pictures = whole.pictures().stream().filter(picture -> picture.content().length > 0)
                .collect(Collectors.toMap(Picture::name, Function.identity()));
        return new PrintSource(file, new KitsAlone(needs), pictures, HazardNotes.of(hazards.all()), null).of(Studio.current(), Studio.sign());
    }

    private static Kit named(Kit kit, String title) {
        return new Kit(kit.number(), kit.taker(), title, null, null, kit.size(), kit.contents(), kit.bench(), kit.mass());
    }
}
