package benchful.catalogue;

import benchful.bin.EarlierVersion;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import jakarta.persistence.Entity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Somebody who sells materials: written down once, named by offers and orders, removed only when no offer is left.
 * No two suppliers have the same name, whatever the case of its letters.
 */
@Entity
public class Supplier extends EditedEntity {
    String name;
    String currency;
    BigDecimal minimumOrder;
    BigDecimal delivery;
    BigDecimal freeAbove;
    int leadDays;
    boolean weekdays;
    BigDecimal vat;
    String contact;
    String customerNumber;
    boolean sample;

    /** For the database only; see {@link #stored}. */
    protected Supplier() {}

    /** @param sample true for one that came with the program and leaves with the samples */
    public static Supplier stored(SupplierSpec sheet, boolean sample) {
        Supplier supplier = new Supplier();
        supplier.sample = sample;
        supplier.replace(sheet);
        supplier.persist();
        return supplier;
    }

    public void replace(SupplierSpec sheet) {
        EarlierVersion.keep("supplier", id, isStored() ? toSpec() : sheet, sheet);
        name = sheet.name().strip();
        currency = sheet.currency();
        minimumOrder = sheet.minimumOrder();
        delivery = sheet.delivery();
        freeAbove = sheet.freeAbove();
        leadDays = sheet.leadDays();
        weekdays = sheet.weekdays();
        vat = sheet.vat();
        contact = sheet.contact();
        customerNumber = sheet.customerNumber();
    }

    public SupplierSpec toSpec() {
        return new SupplierSpec(name, currency, minimumOrder, delivery, freeAbove, leadDays, weekdays, vat, contact, customerNumber);
    }

    /** Whatever the case of its letters and the blanks around them. */
    public static Optional<Supplier> byName(String name) {
        return find("lower(name) = ?1", name.strip().toLowerCase(Locale.ROOT)).firstResultOptional();
    }

    /** All, by name. */
    public static List<Supplier> all() {
        return list("order by lower(name)");
    }

    /** A page of them, by name. */
    public static Paged<Supplier> page(Sought sought) {
        return Paged.of(find("lower(name) like ?1 escape '!' order by lower(name)", sought.pattern()), sought);
    }

    public String name() {
        return name;
    }

    public String currency() {
        return currency;
    }

    public boolean sample() {
        return sample;
    }
}
