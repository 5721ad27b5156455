package benchful.venues;

import benchful.web.forms.fields.Count;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
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
@Spec(name = "venue-1", title = "A room that classes are held in", file = "a venue file")
public record VenueSpec(
        @Required @Filled(120) @Mend("Give the venue a name.") String name,
        @ShortText String address,
        @Range(from = 1, to = 500) @Mend("Give the places at the bench, from 1 to 500.") Integer seats,
        @Count Integer sockets,
        Ventilation ventilation,
        Boolean water,
        Boolean firstAid,
        @Length(most = 500) Map<@Filled(80) @Mend("Name a tool in at most 80 letters.") String, @Count Integer> tools,
        @Length(most = 40) List<@ShortText String> rules,
        @LongText String notes) {

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
