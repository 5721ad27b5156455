package benchful.bin;

import benchful.bin.RestorationOutcome.Back;
import benchful.bin.RestorationOutcome.Lacking;
import benchful.bin.RestorationOutcome.NameTaken;
import benchful.bin.RestorationOutcome.Occupied;
import benchful.bin.RestorationOutcome.Taken;
import benchful.database.TableMap;
import benchful.web.StoredEntity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Puts back what an entry of the bin holds: rows come back with their identifiers, changed columns get their value again where
 * nobody changed them since, and what the removal itself wrote goes. Then the database is as if the removal had never been.
 */
@ApplicationScoped
class Restoration {
    private final EntityManager database;

    Restoration(EntityManager database) {
        this.database = database;
    }

    /**
     * @param entry kept from everybody else until the transaction ends
     * @param newNames for things whose name was taken meanwhile, by {@link NameTaken#field}
     */
    @Transactional
    RestorationOutcome restore(BinEntry entry, Map<String, String> newNames) {
        TableMap tables = Bin.tables(database);
        List<BinTable> held = tables.tables().stream().map(t -> new BinTable(database, entry.id(), t)).filter(BinTable::isConcerned).toList();
        held.forEach(t -> t.rename(newNames));
        List<NameTaken> taken = held.stream().flatMap(t -> t.namesTaken().stream()).toList();
        if (!taken.isEmpty()) {
            return new Taken(taken);
        }
        if (held.stream().anyMatch(BinTable::isOccupied)) {
            return new Occupied();
        }
        BinLinks links = new BinLinks(database, entry.id(), held);
        links.handOver();
        if (links.isMissing()) {
            return new Lacking(new TreeSet<>(links.holders()).stream().map(id -> StoredEntity.byId(BinEntry.class, id)).flatMap(Optional::stream).toList());
        }
        return putBack(entry, held);
    }

    private Back putBack(BinEntry entry, List<BinTable> held) {
        held.forEach(BinTable::insert);
        held.forEach(BinTable::relink);
        List<BinTable> backwards = new ArrayList<>(held);
        Collections.reverse(backwards);
        backwards.forEach(BinTable::takeOutWritten);
        entry.delete();
        return new Back(entry.address());
    }
}
