package benchful.catalogue.suppliers;

import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierSpec;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A supplier as a line of the list, its terms in words; empty where there is none. */
@TemplateData
public record SupplierRow(
        long id, String name, String lead, String delivery, String minimum, String vat, String contact, long offers, boolean sample) {

    static SupplierRow of(Supplier s, long offers) {
        SupplierSpec sheet = s.toSpec();
        return new SupplierRow(s.id(), s.name(), sheet.leadWords(),
                delivery(sheet), sheet.minimumOrder() == null ? "" : money(sheet, sheet.minimumOrder()),
                sheet.vat() == null ? "" : Formats.number(sheet.vat(), 2) + " %", sheet.contact() == null ? "" : sheet.contact(),
                offers, s.sample());
    }

    private static String delivery(SupplierSpec s) {
        String charge = s.delivery() == null || s.delivery().signum() == 0 ? "free" : money(s, s.delivery());
        return s.freeAbove() == null ? charge : "%s, free from %s".formatted(charge, money(s, s.freeAbove()));
    }

    private static String money(SupplierSpec s, BigDecimal amount) {
        return Formats.words(Money.of(CurrencyUnit.of(s.currency()), amount));
    }
}
