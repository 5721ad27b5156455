package benchful.batches;

import benchful.core.Fault;
import benchful.core.quantity.Unit;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.JsonPointers;
import java.util.Currency;
import java.util.List;
import java.util.stream.Collectors;

/** What must agree within a batch of kits, and between it and its project. */
final class BatchRules {
    private BatchRules() {}

    static List<Fault> faults(BatchSpec sheet, ProjectSpec project) {
        FaultCollector faults = new FaultCollector();
        String sizes = project.sizes().stream().map(Size::name).collect(Collectors.joining(", "));
        sheet.sizes().keySet().forEach(s -> faults.require(project.size(s).isPresent(), JsonPointers.below("/sizes", s),
                "“%s” has no size “%s”. It has: %s.", project.name(), s, sizes));
        int mixed = sheet.sizes().values().stream().mapToInt(Integer::intValue).sum();
        faults.require(mixed <= sheet.kits(), "/kits", "The sizes add up to %d of %d kits. Raise the one or lower the other.", mixed, sheet.kits());
        faults.require(sheet.packaging() == null || sheet.packaging().dimension().equals(Unit.G.dimension()), "/packaging",
                "Give the packaging as a mass, such as 12 g.");
        faults.require(sheet.currency() == null || known(sheet.currency()), "/currency",
                "“%s” is no currency. Give its three letters, such as GBP or EUR.", sheet.currency());
        return faults.list();
    }

    private static boolean known(String code) {
        return Currency.getAvailableCurrencies().stream().anyMatch(c -> c.getCurrencyCode().equals(code));
    }
}
