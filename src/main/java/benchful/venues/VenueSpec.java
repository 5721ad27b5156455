package benchful.venues;

import benchful.catalogue.HazardName;
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
 * @param hazards of the room itself, by the short names of the library: fire, slips-trips; risk assessments of its classes begin with them
 * @param emergency what somebody has to know at once when something happens; null where nothing is written down
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
        @LongText String notes,
        @Length(most = 40) List<@HazardName @Mend("Name a hazard of the library by its short name, such as “slips-trips”.") String> hazards,
        Emergency emergency) {

    public VenueSpec {
        tools = tools == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(tools));
        rules = rules == null ? List.of() : List.copyOf(rules);
        hazards = hazards == null ? List.of() : List.copyOf(hazards);
        emergency = Emergency.NONE.equals(emergency) ? null : emergency;
    }

    /** Its name, and where it is if that is known. */
    public String place() {
        return address == null ? name : name + ", " + address;
    }

    /**
     * What stands on the room's emergency card.
     *
     * @param call the number of the emergency services
     * @param exits the ways out
     * @param assembly where everybody meets outside
     * @param fire where the extinguisher and the alarm are, and who may use them
     * @param firstAid where the box is
     * @param defibrillator where the nearest one is
     * @param hospital the nearest one with an emergency department
     * @param keeper who looks after the building, with the telephone number
     */
    public record Emergency(
            @ShortText String call,
            @ShortText String exits,
            @ShortText String assembly,
            @ShortText String fire,
            @ShortText String firstAid,
            @ShortText String defibrillator,
            @ShortText String hospital,
            @ShortText String keeper) {
        /** Of which nothing is written down. */
        public static final Emergency NONE = new Emergency(null, null, null, null, null, null, null, null);
    }

    /** How fumes and dust leave the room. */
    public enum Ventilation {
        NONE,
        WINDOWS,
        EXTRACTOR
    }
}
