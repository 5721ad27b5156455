package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.Fault;
import benchful.core.buying.Bought;
import benchful.core.buying.Buyer;
import benchful.core.buying.BuyingRequest;
import benchful.core.buying.ShoppingList;
import benchful.core.buying.SupplierOrder;
import benchful.core.buying.Want;
import benchful.core.cutting.CuttingPlan;
import benchful.core.needs.Need;
import benchful.core.needs.Take;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.projects.Size;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Computes what a class takes: works out each size, packs the kits, adds up the needs, plans the cutting and buys what stock
 * does not cover, to arrive by the day before the first meeting. What can't be computed is a fault; the rest stands.
 */
public final class MaterialsPlanner {
    private final ClassFile file;
    private final Map<String, MaterialSheet> catalogue;
    private final Market market;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();

    private MaterialsPlanner(ClassFile file) {
        this.file = file;
        this.catalogue = file.materials().stream().collect(Collectors.toMap(MaterialSheet::name, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        this.market = new Market(file, faults, warnings);
    }

    /** Without a date of today: nothing is late. */
    public static MaterialsPlan plan(ClassFile file) {
        return plan(file, null);
    }

    /** @param today orders whose last day is past are marked late; null where that does not matter */
    public static MaterialsPlan plan(ClassFile file, LocalDate today) {
        return new MaterialsPlanner(file).plan(today);
    }

    private MaterialsPlan plan(LocalDate today) {
        Seating seating = new Seating(file.project(), file.setup());
        faults.addAll(seating.faults());
        warnings.addAll(seating.warnings());
        Map<String, SizedPiece> pieces = pieces(seating.seats());
        KitPacker packer = new KitPacker(file.project(), pieces, catalogue);
        List<Kit> kits = packer.pack(seating.seats());
        Map<String, Need> needs = needs(seating.seats(), pieces);
        Map<String, CuttingPlan> cuttings = new LinkedHashMap<>();
        List<Want> wants = needs.values().stream().map(need -> want(need, cuttings)).filter(Objects::nonNull).toList();
        ShoppingList list = Buyer.buy(new BuyingRequest(market.currency(), wants, today));
        list.orders().forEach(this::warn);
        return new MaterialsPlan(sizes(seating.seats(), pieces), kits, packer.bench(seating.seats()), materials(needs, kits, cuttings, list),
                list.orders(), list.orders().stream().map(SupplierOrder::orderBy).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null),
                list.total(), list.bound(), list.proof(), warnings, faults);
    }

    private Map<String, SizedPiece> pieces(List<Seat> seats) {
        Map<String, SizedPiece> pieces = new LinkedHashMap<>();
        for (Size size : file.project().sizes()) {
            if (seats.stream().anyMatch(seat -> seat.size().equals(size.name()))) {
                SizedPiece piece = PieceSizer.size(file.project(), size, catalogue);
                pieces.put(size.name(), piece);
                piece.faults().stream().map(f -> new Fault("/project" + f.pointer(), f.detail())).filter(f -> !faults.contains(f)).forEach(faults::add);
            }
        }
        return pieces;
    }

    private Map<String, Need> needs(List<Seat> seats, Map<String, SizedPiece> pieces) {
        try {
            return new ClassNeeds(file.project(), file.setup().level(), pieces, catalogue).needs(seats);
        } catch (IllegalArgumentException e) {
            faults.add(new Fault("/materials", e.getMessage()));
            return Map.of();
        }
    }

    /** Null where the material's packs can't be reckoned with; the fault then says why. */
    private Want want(Need need, Map<String, CuttingPlan> cuttings) {
        MaterialSheet material = catalogue.get(need.material());
        if (material == null) {
            warnings.add(Sentence.of("“%s” is not in the catalogue, so it has no waste allowance and no offers.", need.material()));
            return new Want(need.material(), need.total(), Quantity.zero(need.total().unit()), List.of(), arriveBy());
        }
        try {
            return need.cuts().isEmpty() ? plain(material, need) : cut(material, need, cuttings);
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(market.pointer(material), e.getMessage()));
            return null;
        }
    }

    private Want plain(MaterialSheet material, Need need) {
        Quantity onHand = material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand().in(material.unit());
        return new Want(material.name(), need.total(), onHand, market.packs(material), arriveBy());
    }

    private Want cut(MaterialSheet material, Need need, Map<String, CuttingPlan> cuttings) {
        Cutter.Cutting cutting = new Cutter(material, need, market.currency(), arriveBy()).cut(market.lengths(material));
        if (cutting.plan() != null) {
            cuttings.put(material.name(), cutting.plan());
        } else {
            warnings.add(Sentence.of("“%s” can't be cut: %s", material.name(), cutting.problem().toString()));
        }
        return cutting.want();
    }

    private void warn(SupplierOrder order) {
        if (order.shortOfMinimum() != null) {
            warnings.add(Sentence.of("The order from “%s” is %s short of the minimum order.", order.supplier(), order.shortOfMinimum()));
        }
        if (order.late()) {
            warnings.add(Sentence.of("“%s” can't deliver in time: the last day to order was %s.", order.supplier(), order.orderBy()));
        }
    }

    private LocalDate arriveBy() {
        return file.setup().meetings().stream().map(m -> m.date().minusDays(1)).min(Comparator.naturalOrder()).orElse(null);
    }

    private static List<MaterialsPlan.SizeTaken> sizes(List<Seat> seats, Map<String, SizedPiece> pieces) {
        return pieces.values().stream().map(piece -> new MaterialsPlan.SizeTaken(piece.size(), count(seats, piece, Take.Taker.STUDENT),
                count(seats, piece, Take.Taker.DEMONSTRATION), count(seats, piece, Take.Taker.SPARE), piece)).toList();
    }

    private static int count(List<Seat> seats, SizedPiece piece, Take.Taker taker) {
        return (int) seats.stream().filter(s -> s.size().equals(piece.size()) && s.taker() == taker).count();
    }

    private static List<MaterialsPlan.MaterialPlan> materials(
            Map<String, Need> needs, List<Kit> kits, Map<String, CuttingPlan> cuttings, ShoppingList list) {
        Map<String, Bought> bought = list.materials().stream().collect(Collectors.toMap(Bought::material, Function.identity()));
        return needs.values().stream().map(need -> new MaterialsPlan.MaterialPlan(need.material(), need.total().unit(), need,
                ClassNeeds.chosen(need.material(), kits), cuttings.get(need.material()), bought.get(need.material()))).toList();
    }
}
