package benchful.orders;

import benchful.catalogue.Supplier;
import benchful.core.buying.LeadTime;
import benchful.core.buying.Purchase;
import benchful.core.buying.Totals;
import benchful.studio.StudioSpec;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import jakarta.persistence.CascadeType;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.hibernate.annotations.BatchSize;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * An order to one supplier. It is written as a draft and may then be changed; once sent it stands, and its lines are
 * received in one parcel or several until all has come, or the rest is cancelled. It keeps the supplier's terms and the
 * names of materials as they were when it was written.
 */
@Entity
public class PurchaseOrder extends EditedEntity {
    /** Null where the supplier was removed since. */
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "supplier_id")
    Supplier seller;

    @Column(name = "supplier")
    String supplier;

    String currency;
    BigDecimal delivery;
    BigDecimal vat;
    int leadDays;
    boolean weekdays;

    @Enumerated(EnumType.STRING)
    OrderStatus status = OrderStatus.DRAFT;

    String note;
    String deliverTo;
    String customerNumber;
    LocalDate writtenOn;
    LocalDate sentOn;
    Instant changedAt;

    @OneToMany(mappedBy = "order", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("position, id")
    @BatchSize(size = 100)
    List<OrderLine> lines = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "order_class", joinColumns = @JoinColumn(name = "order_id"))
    @Column(name = "class_id")
    @BatchSize(size = 100)
    Set<Long> classIds = new TreeSet<>();

    /** For the database only; see {@link #draft}. */
    protected PurchaseOrder() {}

    /**
     * A draft without lines, not stored yet.
     *
     * @param delivery before VAT
     * @param studio whose order it is
     * @param classIds the classes it is for; none for an order to fill the shelf
     */
    static PurchaseOrder draft(Supplier seller, Money delivery, Collection<Long> classIds, StudioSpec studio, LocalDate today) {
        PurchaseOrder order = new PurchaseOrder();
        order.seller = seller;
        order.supplier = seller.name();
        order.currency = seller.currency();
        order.delivery = delivery.getAmount();
        order.vat = Objects.requireNonNullElse(seller.toSpec().vat(), BigDecimal.ZERO);
        order.leadDays = seller.toSpec().leadDays();
        order.weekdays = seller.toSpec().weekdays();
        order.customerNumber = seller.toSpec().customerNumber();
        order.deliverTo = studio.delivery();
        order.writtenOn = today;
        order.classIds.addAll(classIds);
        return order;
    }

    /** Marks a change, so that a form from before it is told from one after it. */
    void changed(Instant now) {
        changedAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    /** @throws IllegalStateException if it was sent before */
    void send(LocalDate today) {
        require(status == OrderStatus.DRAFT, "sent");
        status = OrderStatus.SENT;
        sentOn = today;
    }

    /** Takes note of what has come: all of it, or part. */
    void received() {
        require(status.awaited(), "received");
        status = lines.stream().allMatch(l -> l.outstanding() == 0) ? OrderStatus.RECEIVED : OrderStatus.PART_RECEIVED;
    }

    void cancel() {
        require(status.awaited(), "cancelled");
        status = OrderStatus.CANCELLED;
    }

    private void require(boolean possible, String what) {
        if (!possible) {
            throw new IllegalStateException("Order %d is %s and can't be %s.".formatted(id, status, what));
        }
    }

    /** Goods, delivery and VAT, exactly. */
    public Totals totals() {
        return Totals.of(purchases(), Money.of(CurrencyUnit.of(currency), delivery), vat);
    }

    public List<Purchase> purchases() {
        return lines.stream().map(OrderLine::purchase).toList();
    }

    /** The last day for the first line; null where no line has one. */
    public LocalDate neededBy() {
        return lines.stream().filter(l -> l.outstanding() > 0).map(OrderLine::neededBy).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    /** The last day to send it so that all arrives in time; null where no line has a day. */
    public LocalDate orderBy() {
        return neededBy() == null ? null : lead().orderBy(neededBy());
    }

    /** The day on which it should arrive; null while it is not sent. */
    public LocalDate expectedOn() {
        return sentOn == null ? null : lead().arrives(sentOn);
    }

    private LeadTime lead() {
        return new LeadTime(leadDays, weekdays);
    }

    /** True where it comes later than it is needed: it is expected too late, or, not sent yet, the last day to send it is past. */
    public boolean late(LocalDate today) {
        LocalDate expected = sentOn == null ? lead().arrives(today) : expectedOn();
        return status.open() && neededBy() != null && expected.isAfter(neededBy());
    }

    public String supplier() {
        return supplier;
    }

    /** Null where the supplier was removed since. */
    public Supplier seller() {
        return seller;
    }

    public OrderStatus status() {
        return status;
    }

    /** Null for none. */
    /** Remarks for the supplier; null for none. */
    public String note() {
        return note;
    }

    /** Lines of the address to which it is sent; null for none. */
    public String deliverTo() {
        return deliverTo;
    }

    /** By which the supplier knows the studio; null for none. */
    public String customerNumber() {
        return customerNumber;
    }

    public LocalDate writtenOn() {
        return writtenOn;
    }

    /** Null while it is not sent. */
    public LocalDate sentOn() {
        return sentOn;
    }

    public List<OrderLine> lines() {
        return List.copyOf(lines);
    }

    public Set<Long> classIds() {
        return Set.copyOf(classIds);
    }

    /** Drafts and what is awaited, the latest first. */
    public static List<PurchaseOrder> open() {
        return list("status in (DRAFT, SENT, PART_RECEIVED) order by id desc");
    }

    /** A page of drafts and what is awaited, the latest first. */
    static Paged<PurchaseOrder> open(Sought sought) {
        return page("status in (DRAFT, SENT, PART_RECEIVED)", sought);
    }

    /** A page of received and cancelled ones, the latest first. */
    static Paged<PurchaseOrder> closed(Sought sought) {
        return page("status in (RECEIVED, CANCELLED)", sought);
    }

    private static Paged<PurchaseOrder> page(String status, Sought sought) {
        return Paged.of(find(status + " and lower(cast(id as string) || ' ' || supplier) like ?1 escape '!' order by id desc", sought.pattern()), sought);
    }
}
