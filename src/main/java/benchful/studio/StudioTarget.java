package benchful.studio;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import jakarta.enterprise.event.Event;
import java.util.List;
import org.joda.money.CurrencyUnit;

/**
 * The studio, taking a sheet from its form.
 *
 * @param saved told within the transaction
 */
record StudioTarget(Studio studio, Event<StudioSpec> saved) implements SpecPost.Target<StudioSpec> {

    @Override
    public long version() {
        return studio.version();
    }

    @Override
    public StudioSpec stored() {
        return studio.toSpec();
    }

    @Override
    public List<Fault> faults(StudioSpec sheet) {
        return sheet.currency() == null || CurrencyUnit.registeredCurrencies().stream().anyMatch(c -> c.getCode().equals(sheet.currency())) ? List.of()
                : List.of(new Fault("/currency", "“%s” is no currency here. Give its three letters, such as GBP.".formatted(sheet.currency())));
    }

    @Override
    public String save(StudioSpec sheet) {
        studio.replace(sheet);
        Studio.flush();
        saved.fire(sheet);
        return "/studio";
    }
}
