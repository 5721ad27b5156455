package benchful.reviews;

import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.List;

/** What the latest classes of a project made, to be seen where it is shown. */
@Named("finished")
@ApplicationScoped
@Unremovable
public class FinishedPieces {
    private static final int MOST = 6;

    /** The latest class first. */
    public List<PhotoLine> of(long project) {
        return QuarkusTransaction.requiringNew().call(() -> ClassPhoto.photos(project, MOST));
    }
}
