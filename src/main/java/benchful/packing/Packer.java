package benchful.packing;

import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.quantity.Quantity;
import benchful.plans.materials.Requirements;
import benchful.plans.stored.PlanService;
import benchful.stock.CutMaterial;
import benchful.stock.Offcuts;
import benchful.stock.StockLedger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Ticks what is packed, and takes ticks back. Stock moves with each: a tick that stands already, or is gone already, moves
 * nothing, so that a form sent twice does no harm, and two people may pack one class at once.
 */
@ApplicationScoped
public class Packer {
    private final PlanService plans;
    private final CuttingWork cutting;
    private final Offcuts offcuts;
    private final StockLedger ledger;
    private final Clock clock;

    Packer(PlanService plans, CuttingWork cutting, Offcuts offcuts, StockLedger ledger, Clock clock) {
        this.plans = plans;
        this.cutting = cutting;
        this.offcuts = offcuts;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** The packing list of a class as it stands. */
    @Transactional
    public PackingList list(CraftClass craftClass) {
        return list(craftClass, plans.needs(plans.file(craftClass)));
    }

    /** The same where what the class takes is known already. */
    @Transactional
    public PackingList list(CraftClass craftClass, Requirements required) {
        return PackingList.of(required, PackedContent.of(craftClass.id()));
    }

    /**
     * What is packed was cut: a cut that is not booked yet is booked along with the first of its pieces.
     * Moves materials in the order of their identifiers, so that two packers never wait for each other.
     *
     * @param craftClass kept from other packers until the transaction ends
     */
    @Transactional
    void change(CraftClass craftClass, List<BoxChange> changes) {
        PackingList list = list(craftClass);
        Map<Long, CutMaterial.Sizes> cuts = cutting.open(craftClass);
        Stream<Move> back = changes.stream().flatMap(c -> c.untick().stream().map(m -> PackedContent.of(craftClass.id(), c.kit(), m)).flatMap(Optional::stream))
                .map(content -> new Move(content, c -> putBack(c, note("Put back", craftClass, list, c))));
        Stream<Move> in = changes.stream().flatMap(c -> list.box(c.kit()).stream().flatMap(box -> box.items().stream())
                        .filter(item -> c.tick().test(item.material()) && !item.ticked()).map(item -> content(craftClass, c.kit(), item)))
                .map(content -> new Move(content, c -> {
                    cut(craftClass, c, cuts);
                    pack(c, note("Packed", craftClass, list, c));
                }));
        Stream.concat(back, in).sorted(Comparator.comparing(Move::material)).forEach(Move::make);
    }

    private record Move(PackedContent content, Consumer<PackedContent> kind) {
        long material() {
            return content.stocked == null ? 0 : content.stocked.id();
        }

        void make() {
            kind.accept(content);
        }
    }

    private PackedContent content(CraftClass craftClass, String kit, Box.Item item) {
        PackedContent content = new PackedContent(craftClass.id(), kit, item.material(), item.amount(), clock.instant());
        content.stocked = Material.byName(item.material()).filter(m -> !item.lent() && fits(m, item.amount())).orElse(null);
        return content;
    }

    private static boolean fits(Material material, Quantity amount) {
        return material.unit().dimension().equals(amount.dimension());
    }

    private void cut(CraftClass craftClass, PackedContent content, Map<Long, CutMaterial.Sizes> cuts) {
        Optional.ofNullable(content.stocked).map(m -> cuts.get(m.id())).ifPresent(sizes -> offcuts.cut(craftClass.id(), content.stocked.id(), sizes, craftClass.title()));
    }

    private void pack(PackedContent content, String note) {
        if (content.stocked != null) {
            content.released = ledger.pack(content.stocked.id(), content.classId, content.amount(), note);
        }
        content.persist();
    }

    private void putBack(PackedContent content, String note) {
        if (content.stocked != null) {
            ledger.unpack(content.stocked.id(), content.classId, content.amount(), content.released, note);
        }
        content.delete();
    }

    /** Says the class and the kit's number, never the student: what moved stays in the ledger when the class has gone. */
    private static String note(String what, CraftClass craftClass, PackingList list, PackedContent content) {
        return "%s: %s, %s".formatted(what, craftClass.title(), list.place(content.kit));
    }
}
