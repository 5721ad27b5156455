package benchful.catalogue;

import benchful.core.buying.Purchase;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.web.StoredEntity;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hibernate.annotations.BatchSize;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A stored offer: a pack of one material from one supplier, with the day its price was learnt. The same pack stays the same
 * offer when its price changes, so that orders can refer to it.
 */
@Entity
@Table(name = "offer")
public class SupplierOffer extends StoredEntity {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    Material material;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    Supplier supplier;

    int position;
    StoredAmount holds;
    Integer lengths;
    StoredAmount sheetLength;
    StoredAmount sheetWidth;
    String article;
    String link;
    BigDecimal price;
    LocalDate pricedOn;

    @ElementCollection
    @CollectionTable(name = "price_break", joinColumns = @JoinColumn(name = "offer_id"))
    @OrderBy("packs")
    @BatchSize(size = 500)
    List<PriceBreak> breaks = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "past_price", joinColumns = @JoinColumn(name = "offer_id"))
    @OrderBy("until desc")
    @BatchSize(size = 500)
    List<PastPrice> pastPrices = new ArrayList<>();

    /** For the database only. */
    protected SupplierOffer() {}

    SupplierOffer(Material material, Supplier supplier) {
        this.material = material;
        this.supplier = supplier;
    }

    /** The same supplier's pack of the same size: only its price may differ. */
    boolean isFor(Supplier other, Offer offer) {
        return supplier.equals(other) && holds.says(offer.holds()) && Objects.equals(lengths, offer.lengths())
                && (sheetLength == null || offer.sheet() == null || sheetLength.says(offer.sheet().length()) && sheetWidth.says(offer.sheet().width()));
    }

    void take(Offer offer, int place, LocalDate today) {
        position = place;
        article = offer.article();
        link = offer.link();
        holds = StoredAmount.of(offer.holds());
        lengths = offer.lengths();
        sheetLength = offer.sheet() == null ? null : StoredAmount.of(offer.sheet().length());
        sheetWidth = offer.sheet() == null ? null : StoredAmount.of(offer.sheet().width());
        if (price == null || price.compareTo(offer.price()) != 0 || !offer.breaks().equals(sheetBreaks())) {
            keepPast(offer.price(), today);
            price = offer.price();
            pricedOn = today;
            breaks.clear();
            offer.breaks().forEach(b -> breaks.add(new PriceBreak(b.packs(), b.price())));
        }
    }

    /** A price put right on the day it was learnt was never one. */
    private void keepPast(BigDecimal fresh, LocalDate today) {
        if (price != null && price.compareTo(fresh) != 0 && pricedOn.isBefore(today)) {
            pastPrices.add(new PastPrice(price, pricedOn, today));
        }
    }

    /** @throws benchful.web.Unusable where an amount of it can't be read */
    public Offer toSpec() {
        Extent sheet = sheetLength == null ? null : new Extent(material.read(sheetLength), material.read(sheetWidth));
        return Offer.of(supplier.name, holds(), price).withLengths(lengths).withSheet(sheet).withArticle(article).withLink(link).withBreaks(sheetBreaks());
    }

    /** The offer without its amounts. */
    Offer priceOnly() {
        return Offer.of(supplier.name, null, price).withLengths(lengths).withArticle(article).withLink(link).withBreaks(sheetBreaks());
    }

    /** Whether it is what was bought: so much in a pack, at this price for so many. */
    public boolean sold(Supplier seller, Purchase purchase) {
        return supplier.equals(seller) && (isPack(purchase) || isLength(purchase));
    }

    private boolean isPack(Purchase purchase) {
        return holds.says(purchase.holds()) && priceFor(purchase.packs()).compareTo(purchase.price().getAmount()) == 0;
    }

    /** So many times what is measured off a roll, in one length. */
    private boolean isLength(Purchase purchase) {
        if (!purchase.holds().unit().runs()) {
            return false;
        }
        BigDecimal[] steps = purchase.holds().base().divideAndRemainder(holds().base());
        return steps[1].signum() == 0 && priceFor(steps[0].intValue()).multiply(steps[0]).compareTo(purchase.price().getAmount()) == 0;
    }

    private BigDecimal priceFor(int packs) {
        return breaks.stream().filter(b -> b.packs <= packs).reduce((a, b) -> b).map(b -> b.price).orElse(price);
    }

    /** What is in one pack. */
    Quantity holds() {
        return material.read(holds);
    }

    private List<Offer.PriceBreak> sheetBreaks() {
        return breaks.stream().map(b -> new Offer.PriceBreak(b.packs, b.price)).toList();
    }

    /** An amount in the supplier's currency. */
    Money money(BigDecimal amount) {
        return Money.of(CurrencyUnit.of(supplier.currency), amount);
    }

    /** The price of one pack before VAT. */
    public Money money() {
        return money(price);
    }

    /** How many offers there are of each of these suppliers, by its id; of those without one nothing is said. */
    public static Map<Long, Long> counts(Collection<Supplier> suppliers) {
        return getEntityManager().createQuery("select supplier.id, count(*) from SupplierOffer where supplier in :suppliers group by supplier.id", Object[].class)
                .setParameter("suppliers", suppliers).getResultStream().collect(Collectors.toMap(row -> (Long) row[0], row -> (Long) row[1]));
    }

    /** Its number with the supplier; null where not known. */
    public String article() {
        return article;
    }

    /** A page that shows it; null for none. */
    public String link() {
        return link;
    }

    /** What a pack holds, in words: "10 sheets 70 × 50 cm", "5 lengths of 1 m". */
    public String pack() {
        return OfferRow.pack(this);
    }

    /** The same of what was bought; null for a length off a roll, which says it itself. */
    public String pack(Purchase purchase) {
        return holds.says(purchase.holds()) ? pack() : null;
    }

    public Material material() {
        return material;
    }

    public Supplier supplier() {
        return supplier;
    }

    /** The day the price was last changed. */
    public LocalDate pricedOn() {
        return pricedOn;
    }
}
