package benchful.orders;

import benchful.catalogue.Material;
import benchful.catalogue.StoredAmount;
import benchful.catalogue.SupplierOffer;
import benchful.core.buying.Purchase;
import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import benchful.web.StoredEntity;
import benchful.web.Unusable;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** A line of an order: packs of one material at a price, and how many of them have come. */
@Entity
public class OrderLine extends StoredEntity {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "order_id")
    PurchaseOrder order;

    int position;

    /** Null where the material was removed from the catalogue since. */
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "material_id")
    Material stocked;

    @Column(name = "material")
    String material;

    int packs;
    StoredAmount holds;
    String pack;
    String article;
    String link;
    BigDecimal price;
    BigDecimal vat;
    LocalDate neededBy;
    int received;

    /** For the database only. */
    protected OrderLine() {}

    /** @param offer what is bought; null where it is not in the catalogue any more */
    OrderLine(PurchaseOrder order, Material stocked, Purchase purchase, SupplierOffer offer) {
        this.order = order;
        this.position = order.lines.size();
        this.stocked = stocked;
        this.material = purchase.material();
        this.packs = purchase.packs();
        this.holds = StoredAmount.of(purchase.holds());
        this.price = purchase.price().getAmount();
        this.vat = order.vat;
        this.neededBy = purchase.arriveBy();
        if (offer != null) {
            this.pack = offer.pack(purchase);
            this.article = offer.article();
            this.link = offer.link();
        }
    }

    /** The line with its exact value before VAT and its VAT. */
    public Purchase purchase() {
        return Purchase.of(material, packs, holds(), BigMoney.of(CurrencyUnit.of(order.currency), price), vat, neededBy);
    }

    public String material() {
        return material;
    }

    public int packs() {
        return packs;
    }

    /** @throws benchful.web.Unusable where what is stored can't be read */
    public Quantity holds() {
        return StoredAmount.read(holds, "the pack of “%s” on order %d".formatted(material, order.id()), "/orders/" + order.id());
    }

    /** What one pack holds, in words: "10 sheets 70 × 50 cm". */
    public String pack() {
        return pack != null ? pack : Formats.withUnit(holds());
    }

    /** "3 packs of 10 sheets 70 × 50 cm", "0.8 m × 140 cm"; of what is measured off a roll by less, "2 m × 140 cm (20 packs of 0.1 m × 140 cm)". */
    public String counted() {
        String packed = "%s of %s".formatted(Formats.counted(packs, "pack"), pack());
        if (!holds().unit().runs()) {
            return packed;
        }
        return packs == 1 ? pack() : pack == null ? "%d × %s".formatted(packs, pack()) : "%s (%s)".formatted(Formats.words(holds().times(packs)), packed);
    }

    /** Its number with the supplier; null where not known. */
    public String article() {
        return article;
    }

    /** A page of the supplier that shows it; null for none. */
    public String link() {
        return link;
    }

    Optional<Quantity> readable() {
        try {
            return Optional.ofNullable(holds());
        } catch (Unusable e) {
            return Optional.empty();
        }
    }

    /** Packs that have come. */
    public int received() {
        return received;
    }

    /** Packs that have not come. */
    public int outstanding() {
        return packs - received;
    }

    /** The last day on which it can arrive; null for no such day. */
    public LocalDate neededBy() {
        return neededBy;
    }
}
