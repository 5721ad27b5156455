package benchful.plans.materials.cutting;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.core.buying.Assortment;
import benchful.core.buying.Bought;
import benchful.core.buying.Buyer;
import benchful.core.buying.BuyingRequest;
import benchful.core.buying.Purchase;
import benchful.core.buying.ShoppingList;
import benchful.core.buying.SupplierOrder;
import benchful.core.buying.Want;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.web.Sought;
import benchful.web.Unusable;
import benchful.web.tasks.Asker;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Buys for needs, of one class or of several: what is cut is planned first and gives a want for each stock size on offer, of
 * which buying chooses the mix; the rest is wanted as it is. Once all is bought, each need's balance is struck. What can't
 * be reckoned with is a fault, and its need stays unmet.
 */
public final class ShoppingPlanner {
    private static final String TOO_LARGE = "The amounts of “%s” are too large to reckon with. Check what it is needed for, what is on hand and what its packs hold.";

    /** What the rounding of many pieces may leave over, and nobody buys [mm2]. */
    private static final BigDecimal LEAST_AREA = BigDecimal.ONE;

    private final Map<String, MaterialSpec> catalogue;
    private final OfferCatalogue market;
    private final List<Fault> faults;
    private final List<Sentence> warnings;
    private final List<Want> wants = new ArrayList<>();
    private final Set<Integer> beside = new HashSet<>();
    private final Map<String, StockMixes<?, ?>> mixes = new LinkedHashMap<>();
    private final Map<String, Cutting> cuttings = new HashMap<>();

    /** @param currency its code; null for the first supplier's */
    public ShoppingPlanner(CatalogueSpec catalogue, String currency, List<Fault> faults, List<Sentence> warnings) {
        this.catalogue = byName(catalogue.materials());
        this.market = new OfferCatalogue(catalogue, currency, faults, warnings);
        this.faults = faults;
        this.warnings = warnings;
    }

    public static Map<String, MaterialSpec> byName(List<MaterialSpec> materials) {
        return materials.stream().collect(Collectors.toMap(MaterialSpec::name, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /**
     * @param arriveBy the last day on which a material can arrive; null for no such day
     * @param today orders whose last day is past are marked late; null where that does not matter
     * @return with what becomes of each need, in their order
     */
    public ShoppingList buy(Collection<Need> needs, Function<String, LocalDate> arriveBy, LocalDate today) {
        needs.forEach(need -> want(need, arriveBy.apply(need.material()), today));
        ShoppingList list = bought(wants, today);
        mixes.forEach((material, mix) -> cuttings.put(material, mix.cutting(bought(mix, list))));
        list.orders().forEach(this::warn);
        List<Bought> materials = needs.stream().map(need -> bought(need, list)).toList();
        return new ShoppingList(list.orders(), materials, list.total(), bound(list, today), list.proven() && beside.isEmpty());
    }

    private ShoppingList bought(List<Want> all, LocalDate today) {
        List<Assortment> assortments = mixes.values().stream().filter(mix -> !mix.isSettled()).map(Assortment.class::cast).toList();
        return Buyer.buy(new BuyingRequest(market.currency(), all, assortments, today));
    }

    /** An area that is bought beside sheets of the same material might be had from those sheets, so it bounds nothing. */
    private Money bound(ShoppingList list, LocalDate today) {
        return beside.isEmpty() ? list.bound() : bought(IntStream.range(0, wants.size())
                .mapToObj(w -> beside.contains(w) ? wants.get(w).of(Quantity.zero(wants.get(w).need().unit())) : wants.get(w)).toList(), today).bound();
    }

    /** How the materials that were bought are cut to length; null for one that is not. */
    public CuttingPlan cutting(String material) {
        return cuttings.containsKey(material) ? cuttings.get(material).lengths() : null;
    }

    /** How the materials that were bought are cut from sheet; null for one that is not. */
    public SheetPlan sheets(String material) {
        return cuttings.containsKey(material) ? cuttings.get(material).sheets() : null;
    }

    /** What can't be reckoned with becomes a fault, and the need stays unmet. */
    private void want(Need need, LocalDate arriveBy, LocalDate today) {
        Asker.check();
        MaterialSpec material = catalogue.get(need.material());
        if (material == null) {
            warnings.add(Sentence.of(need.waste().signum() > 0 ? "“%s” is not in the catalogue, so it has no offers, and no waste allowance but the line's own."
                    : "“%s” is not in the catalogue, so it has no waste allowance and no offers.", need.material()));
            wants.add(unmet(need, arriveBy));
            return;
        }
        try {
            wants.addAll(need.cuts().isEmpty() ? List.of(plain(material, need, arriveBy)) : cut(material, need, arriveBy, today));
        } catch (IllegalArgumentException e) {
            unmet(need, arriveBy, new Fault(market.pointer(material), e.getMessage()));
        } catch (ArithmeticException e) {
            unmet(need, arriveBy, new Fault(market.pointer(material), TOO_LARGE.formatted(material.name())));
        } catch (CancellationException givenUp) {
            throw givenUp;
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            throw Unusable.failing(words(material.name()), Sought.link("/materials", material.name()), e);
        }
    }

    /** A material, as a failure at it names it. */
    public static String words(String material) {
        return "the material “%s”".formatted(material);
    }

    private Bought bought(Need need, ShoppingList list) {
        List<Bought> parts = IntStream.range(0, wants.size()).filter(w -> wants.get(w).material().equals(need.material()))
                .mapToObj(list.materials()::get).toList();
        Cutting cutting = cuttings.get(need.material());
        if (cutting == null) {
            return parts.get(0);
        }
        List<Purchase> purchases = list.orders().stream().flatMap(order -> order.purchases().stream())
                .filter(purchase -> purchase.material().equals(need.material())).toList();
        return new CutBalance(need, cutting.use(), parts, purchases).bought(market.currency());
    }

    private Want plain(MaterialSpec material, Need need, LocalDate arriveBy) {
        return new Want(material.name(), need.total(), material.shelved(), market.packs(material), arriveBy);
    }

    private List<Want> cut(MaterialSpec material, Need need, LocalDate arriveBy, LocalDate today) {
        boolean sheets = need.cuts().get(0).rectangle() != null;
        Optional<Sentence> problem = sheets
                ? cut(market.sheets(material), arriveBy, today, offers -> RollCutter.of(material, need, offers))
                : cut(market.lengths(material), arriveBy, today, offers -> new LengthCutter(material, need, offers));
        if (problem.isPresent()) {
            warnings.add(Sentence.of("“%s” can't be cut: %s", material.name(), problem.get().toString()));
            return List.of(unmet(need, arriveBy));
        }
        List<Want> needs = mixes.get(material.name()).needs();
        Optional<Want> rest = rest(material, need, arriveBy);
        rest.ifPresent(want -> beside.add(wants.size() + needs.size()));
        return Stream.concat(needs.stream(), rest.stream()).toList();
    }

    /** From what can arrive in time, where all pieces can be cut from that; else from all that is offered. */
    private <S> Optional<Sentence> cut(List<StockCutter.Offer<S>> offers, LocalDate arriveBy, LocalDate today, Function<List<StockCutter.Offer<S>>, StockCutter<S, ?>> cutter) {
        List<StockCutter.Offer<S>> inTime = offers.stream().filter(o -> !o.pack().supplier().late(arriveBy, today)).toList();
        return cut(cutter.apply(inTime), arriveBy).flatMap(problem -> inTime.size() == offers.size() ? Optional.of(problem) : cut(cutter.apply(offers), arriveBy));
    }

    private Optional<Sentence> cut(StockCutter<?, ?> cutter, LocalDate arriveBy) {
        StockMixes<?, ?> mix = new StockMixes<>(cutter, arriveBy, wants.size());
        Optional<Sentence> problem = mix.plan(market.currency());
        if (problem.isEmpty()) {
            mixes.put(mix.material(), mix);
        }
        return problem;
    }

    /** Of a sheet material that is asked for as a mere area too, that area is bought beside the sheets that are cut. */
    private Optional<Want> rest(MaterialSpec material, Need need, LocalDate arriveBy) {
        Quantity rest = need.cuts().stream().map(CutNeed::amount).reduce(need.total(), Quantity::minus);
        return need.cuts().get(0).rectangle() == null || rest.base().compareTo(LEAST_AREA) < 0 ? Optional.empty()
                : Optional.of(new Want(material.name(), rest, Quantity.zero(material.unit()), market.packs(material), arriveBy));
    }

    private static List<Integer> bought(StockMixes<?, ?> mix, ShoppingList list) {
        List<Integer> sizes = mix.wants();
        return IntStream.range(0, sizes.size()).mapToObj(size -> mix.number(size, list.materials().get(sizes.get(size)).need().base())).toList();
    }

    private void unmet(Need need, LocalDate arriveBy, Fault fault) {
        mixes.remove(need.material());
        faults.add(fault);
        wants.add(unmet(need, arriveBy));
    }

    private static Want unmet(Need need, LocalDate arriveBy) {
        return new Want(need.material(), need.total(), Quantity.zero(need.total().unit()), List.of(), arriveBy);
    }

    private void warn(SupplierOrder order) {
        if (order.shortOfMinimum() != null) {
            warnings.add(Sentence.of("The order from “%s” is %s short of the minimum order.", order.supplier(), order.shortOfMinimum()));
        }
        if (order.late()) {
            warnings.add(Sentence.of("“%s” can't deliver in time: the last day to order was %s.", order.supplier(), order.orderBy()));
        }
    }
}
