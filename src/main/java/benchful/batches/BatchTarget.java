package benchful.batches;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;

/** A batch that takes a sheet from its form. */
record BatchTarget(KitBatch batch) implements SpecPost.Target<BatchSpec> {

    @Override
    public long version() {
        return batch.version();
    }

    @Override
    public BatchSpec stored() {
        return batch.isStored() ? batch.sheet() : null;
    }

    @Override
    public List<Fault> faults(BatchSpec sheet) {
        return batch.packed().entrySet().stream().filter(p -> asked(sheet, p.getKey()) < p.getValue()).map(p -> new Fault("/kits",
                "%d kits in size “%s” are packed already, but only %d are asked for. Take some apart first.".formatted(p.getValue(), p.getKey(), asked(sheet, p.getKey()))))
                .toList();
    }

    private int asked(BatchSpec sheet, String size) {
        KitBatch changed = KitBatch.of(batch.project);
        changed.hold(sheet);
        return changed.wanted().getOrDefault(size, 0);
    }

    @Override
    public String save(BatchSpec sheet) {
        batch.hold(sheet);
        batch.persistAndFlush();
        return "/batches/" + batch.id();
    }
}
