package benchful.batches;

import benchful.core.Fault;
import benchful.web.SheetPost;
import java.util.List;

/** A batch that takes a sheet from its form. */
record BatchTarget(KitBatch batch) implements SheetPost.Target<BatchSheet> {

    @Override
    public long version() {
        return batch.isStored() ? batch.version() : 0;
    }

    @Override
    public BatchSheet stored() {
        return batch.sheet();
    }

    @Override
    public List<Fault> faults(BatchSheet sheet) {
        return List.of();
    }

    @Override
    public String save(BatchSheet sheet) {
        batch.hold(sheet);
        batch.persistAndFlush();
        return "/batches/" + batch.id();
    }
}
