package benchful.web;

import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Version;

/** What people change in forms: each change makes another version of it, so that a form which began before it is told. */
@MappedSuperclass
public abstract class EditedEntity extends StoredEntity {
    @Version
    protected long version;

    /** 0 while it is not stored. */
    public long version() {
        return isStored() ? version : 0;
    }
}
