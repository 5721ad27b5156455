package benchful.batches;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.Material;
import benchful.classes.ClassFile;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.TermRequest;
import benchful.plans.materials.kits.Kit;
import benchful.plans.stored.AvailableStock;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.stock.Cause;
import benchful.stock.MovementKind;
import benchful.stock.StockLedger;
import benchful.web.Unusable;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Gathers what a batch of kits is planned from, as a class file without steps, and moves stock as its kits are packed. */
@ApplicationScoped
public class BatchService {
    private final AvailableStock shelf;
    private final StockLedger ledger;

    BatchService(AvailableStock shelf, StockLedger ledger) {
        this.shelf = shelf;
        this.ledger = ledger;
    }

    /** All its kits, packed or not. */
    @Transactional(dontRollbackOn = Unusable.class)
    ClassFile file(KitBatch batch) {
        return file(batch, batch.wanted());
    }

    /** The same with what is not packed but whoever makes the piece needs as well. */
    @Transactional(dontRollbackOn = Unusable.class)
    public ClassFile wholeFile(KitBatch batch) {
        return file(batch, batch.project.toSpec(), batch.wanted());
    }

    /** Those that are still to be packed. */
    @Transactional(dontRollbackOn = Unusable.class)
    ClassFile openFile(KitBatch batch) {
        return file(batch, batch.open());
    }

    private ClassFile file(KitBatch batch, Map<String, Integer> kits) {
        return file(batch, batch.packedProject(), kits);
    }

    private ClassFile file(KitBatch batch, ProjectSpec project, Map<String, Integer> kits) {
        CatalogueSpec sheets = shelf.sheetsFor(null, project.materials().stream().map(MaterialLine::material).distinct().toList());
        return new ClassFile(project, batch.asSetup(kits), null, sheets.materials(), sheets.suppliers());
    }

    /** What is still to be packed of the batch, as a part of what is bought together. */
    @Transactional(dontRollbackOn = Unusable.class)
    public TermRequest.Part part(KitBatch batch) {
        return new TermRequest.Part("kits “%s”".formatted(batch.title()), openFile(batch));
    }

    /**
     * Packs kits of one size, or, where the number is below 0, takes as many apart; the shelf moves by their contents.
     *
     * @return what is wrong with the number; nothing where it was done
     */
    @Transactional
    Optional<String> pack(KitBatch batch, String size, int kits) {
        int packed = batch.packed(size);
        int wanted = batch.wanted().getOrDefault(size, 0);
        if (kits == 0 || packed + kits < 0 || packed + kits > Math.max(wanted, packed)) {
            return Optional.of("Of %d kits in size “%s” %d are packed: give how many of the other %d to pack, or of those packed to take apart."
                    .formatted(wanted, size, packed, Math.max(0, wanted - packed)));
        }
        move(Requirements.of(file(batch, Map.of(size, 1))).kits().get(0), kits, "%d kits “%s” in size “%s”".formatted(Math.abs(kits), batch.title(), size));
        batch.pack(size, kits);
        batch.persistAndFlush();
        return Optional.empty();
    }

    /** In the order of the materials' identifiers, so that two packers never wait for each other. */
    private void move(Kit kit, int kits, String what) {
        Map<Long, Quantity> amounts = new TreeMap<>();
        kit.contents().forEach(c -> Material.byName(c.material()).filter(m -> m.unit().dimension().equals(c.amount().dimension()))
                .ifPresent(m -> amounts.merge(m.id(), c.amount().times(Math.abs(kits)), Quantity::plus)));
        MovementKind kind = kits > 0 ? MovementKind.PACKED : MovementKind.RETURNED;
        amounts.forEach((material, amount) -> ledger.move(material, kind, amount, Cause.note((kits > 0 ? "Packed " : "Taken apart: ") + what)));
    }
}
