package benchful.stock.sources;

import benchful.catalogue.Supplier;
import io.quarkus.arc.Unremovable;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.util.List;

/** Who can be chosen as a seller by the first letters. */
@Named("sellers")
@ApplicationScoped
@Unremovable
public class Sellers {
    @Transactional
    public List<String> getNames() {
        return Supplier.all().stream().map(Supplier::name).toList();
    }
}
