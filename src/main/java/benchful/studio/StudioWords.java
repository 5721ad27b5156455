package benchful.studio;

import benchful.catalogue.suppliers.UsualCurrency;
import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;

/** What every page may say of the studio. */
@Named("studio")
@RequestScoped
@Unremovable
public class StudioWords implements UsualCurrency {
    private StudioSpec read;

    /** What sales tax is called. */
    public String getTax() {
        return studio().tax();
    }

    @Override
    public String code() {
        return studio().coin();
    }

    private StudioSpec studio() {
        if (read == null) {
            read = QuarkusTransaction.joiningExisting().call(Studio::current);
        }
        return read;
    }

    /** A text with what sales tax is called in the place of %s. */
    public String taxed(String text) {
        return text.replace("%s", getTax());
    }
}
