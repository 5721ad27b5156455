package benchful.venues;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A room.
 *
 * @param seats places at the bench
 * @param sockets electrical outlets within reach of the bench
 * @param ventilation a window that opens, or an extractor; see {@link Ventilation}
 * @param tools what is in the room, with how many; a class adds what the tutor brings
 */
public record VenueSpec(
        String name,
        String address,
        Integer seats,
        Integer sockets,
        Ventilation ventilation,
        Boolean water,
        Boolean firstAid,
        Map<String, Integer> tools,
        List<String> rules,
        String notes) {

    public VenueSpec {
        tools = tools == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(tools));
        rules = rules == null ? List.of() : List.copyOf(rules);
    }

    /** How fumes and dust leave the room. */
    public enum Ventilation {
        NONE,
        WINDOWS,
        EXTRACTOR
    }
}
