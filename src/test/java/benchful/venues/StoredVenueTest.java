package benchful.venues;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.StoredEntity;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestTransaction
class StoredVenueTest {

    @Test
    void comesBackWholeAndIsFoundByItsNameInAnyCase() {
        VenueSpec loft = new VenueSpec("Stored loft", "12 Slipway", 9, 6, VenueSpec.Ventilation.WINDOWS, true, null,
                Map.of("pliers", 6), List.of("No flames"), "Key at the chandler's",
                List.of("fire", "slips-trips"), new VenueSpec.Emergency("999", "Two doors", "The slipway", null, null, null, null, null));
        long id = Venue.stored(loft, false).id();
        Venue.flush();
        Venue.getEntityManager().clear();

        assertThat(Venue.byName(" stored LOFT").orElseThrow().id()).isEqualTo(id);
        assertThat(StoredEntity.byId(Venue.class, id).orElseThrow().toSpec()).isEqualTo(loft);
    }
}
