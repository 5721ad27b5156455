package benchful.batches;

import benchful.catalogue.CatalogueSheet;
import benchful.classes.Picks;
import benchful.plans.ClassFile;
import benchful.plans.Shelf;
import benchful.plans.TermRequest;
import benchful.projects.ProjectSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;

/** Gathers what a batch of kits is planned from, as a class file without steps. */
@ApplicationScoped
public class BatchService {
    private final Shelf shelf;

    BatchService(Shelf shelf) {
        this.shelf = shelf;
    }

    @Transactional
    public ClassFile file(KitBatch batch) {
        ProjectSheet project = batch.packedProject();
        CatalogueSheet sheets = shelf.sheets(Picks.names(project, batch.asSetup()), List.of());
        return new ClassFile(project, batch.asSetup(), null, sheets.materials(), sheets.suppliers());
    }

    /** The batch as a part of what is bought together. */
    @Transactional
    public TermRequest.Part part(KitBatch batch) {
        return new TermRequest.Part("kits “%s”".formatted(batch.title()), file(batch));
    }
}
