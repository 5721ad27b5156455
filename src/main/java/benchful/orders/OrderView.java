package benchful.orders;

import benchful.catalogue.SupplierOffer;
import benchful.classes.CraftClass;
import benchful.core.buying.Totals;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.web.StoredEntity;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;

/**
 * What the page of an order shows, read from the database before the page is written.
 *
 * @param form packs and prices of a draft
 * @param receipt what came, as it is typed
 * @param notice what kept a button from doing its work; null for nothing
 * @param classes those it was written for
 * @param offers what else the supplier sells, to be added to a draft
 * @param studio whose order it is
 * @param shortOfMinimum how far the goods of a draft fall below the supplier's least order; null where they don't
 */
@TemplateData
public record OrderView(
        PurchaseOrder order, SpecForm form, SpecForm receipt, String notice, LocalDate today, List<Choice> classes, List<Choice> offers,
        Money shortOfMinimum, StudioSpec studio) {

    static OrderView of(PurchaseOrder order, SpecForm form, SpecForm receipt, String notice, LocalDate today) {
        List<Choice> classes = order.classIds.stream().flatMap(id -> StoredEntity.byId(CraftClass.class, id).stream()).map(c -> new Choice(c.id(), c.title())).toList();
        return new OrderView(order, form, receipt, notice, today, classes, offers(order), shortOfMinimum(order), Studio.current());
    }

    private static List<Choice> offers(PurchaseOrder order) {
        return order.status() != OrderStatus.DRAFT || order.seller() == null ? List.of()
                : SupplierOffer.<SupplierOffer>list("supplier = ?1 order by lower(material.name), id", order.seller()).stream().map(Choice::of).toList();
    }

    private static Money shortOfMinimum(PurchaseOrder order) {
        BigDecimal minimum = order.status() != OrderStatus.DRAFT || order.seller() == null ? null : order.seller().toSpec().minimumOrder();
        Money goods = order.totals().goods();
        return minimum == null || goods.getAmount().compareTo(minimum) >= 0 ? null
                : Money.of(goods.getCurrencyUnit(), minimum, RoundingMode.HALF_UP).minus(goods);
    }

    /** Something by its number and its words: a class, or one of the supplier's packs. */
    @TemplateData
    public record Choice(long id, String words) {
        static Choice of(SupplierOffer offer) {
            return new Choice(offer.id(), "%s, %s".formatted(offer.material().name(), offer.pack()));
        }
    }

    /** A draft whose sender the supplier would not know. */
    public boolean nameless() {
        return draft() && studio.sender().isEmpty();
    }

    public boolean draft() {
        return order.status() == OrderStatus.DRAFT;
    }

    public boolean awaited() {
        return order.status().awaited();
    }

    public boolean late() {
        return order.late(today);
    }

    /** The place of a line in the form of a draft. */
    public String line(OrderLine line) {
        return "/lines/" + line.id();
    }

    /** The place of a line in the form of a parcel. */
    public String parcel(OrderLine line) {
        return "/packs/" + line.id();
    }

    public Totals totals() {
        return order.totals();
    }

    public String mail() {
        return OrderMail.text(order, studio);
    }
}
