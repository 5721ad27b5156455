package benchful.bin;

import benchful.web.Pages;
import benchful.web.StoredEntity;
import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.BlockingOperationControl;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import jakarta.ws.rs.core.UriBuilder;
import java.util.Optional;

/** The notice on the page that follows a removal: what was removed, and the button that puts it back. Every page can show it. */
@Named("undo")
@RequestScoped
@Unremovable
public class Undo {
    private static final String REMOVED = "removed";

    private final CurrentVertxRequest request;

    Undo(CurrentVertxRequest request) {
        this.request = request;
    }

    /** The address of a page, with the notice on it where anything was removed. */
    public static String offeredAt(String address, Optional<BinEntry> entry) {
        return entry.map(e -> UriBuilder.fromUri(address).queryParam(REMOVED, e.id()).build().toString()).orElse(address);
    }

    /** What the address says was removed; null where it says nothing, or that is not in the bin any more. */
    public BinEntry getEntry() {
        return entry().orElse(null);
    }

    private Optional<BinEntry> entry() {
        // A page of a failure may be made where nothing may wait for the database.
        if (request.getCurrent() == null || !BlockingOperationControl.isBlockingAllowed()) {
            return Optional.empty();
        }
        return Optional.ofNullable(request.getCurrent().request().getParam(REMOVED)).flatMap(Pages::number)
                .flatMap(id -> QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(BinEntry.class, id)));
    }
}
