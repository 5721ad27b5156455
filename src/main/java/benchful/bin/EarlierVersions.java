package benchful.bin;

import benchful.web.Pages;
import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;

/** The earlier versions of a thing, as its page lists them, and the one that somebody wants back. */
@Named("earlier")
@ApplicationScoped
@Unremovable
public class EarlierVersions {
    private final Clock clock;

    EarlierVersions(Clock clock) {
        this.clock = clock;
    }

    /**
     * @param until when it was saved over
     * @param changed in words, what was changed then
     */
    @TemplateData
    public record Row(long id, LocalDateTime until, String changed) {}

    /**
     * A version that is to come back.
     *
     * @param fresh false where somebody saved the thing since the button was shown
     */
    public record Wanted(EarlierVersion version, boolean fresh) {}

    /** For templates: the latest first. */
    public List<Row> of(String kind, Object thing) {
        return QuarkusTransaction.requiringNew().call(() -> EarlierVersion.of(kind, thing).stream()
                .map(v -> new Row(v.id(), LocalDateTime.ofInstant(v.replacedAt, clock.getZone()), v.changed)).toList());
    }

    /**
     * @param form says in the field {@code latest} which version was the latest when its button was shown
     * @throws NotFoundException if it is not there any more
     */
    @Transactional
    public Wanted wanted(String kind, Object thing, long id, MultivaluedMap<String, String> form) {
        List<EarlierVersion> kept = EarlierVersion.of(kind, thing);
        EarlierVersion wanted = kept.stream().filter(v -> v.id() == id).findFirst().orElseThrow(NotFoundException::new);
        return new Wanted(wanted, Pages.number(form.getFirst("latest")).filter(latest -> latest == kept.get(0).id()).isPresent());
    }

    /** Forgets what was kept for thirty days. */
    @Transactional
    public void sweep() {
        EarlierVersion.delete("replacedAt < ?1", clock.instant().minus(Bin.KEPT));
    }
}
