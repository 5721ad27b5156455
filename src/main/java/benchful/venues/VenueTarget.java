package benchful.venues;

import benchful.catalogue.HazardNames;
import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A venue that takes a sheet from its form. */
record VenueTarget(Venue venue, HazardNames hazards) implements SpecPost.Target<VenueSpec> {

    @Override
    public long version() {
        return venue == null ? 0 : venue.version();
    }

    @Override
    public VenueSpec stored() {
        return venue.toSpec();
    }

    @Override
    public List<Fault> faults(VenueSpec sheet) {
        List<Fault> faults = new ArrayList<>(HazardNames.unknown("/hazards", sheet.hazards(), hazards.byId().keySet()));
        Optional<Venue> namesake = Venue.byName(sheet.name());
        if (namesake.isPresent() && namesake.get() != venue) {
            faults.add(new Fault("/name", "There is a venue called “%s” already. Give this one another name.".formatted(namesake.get().name())));
        }
        return faults;
    }

    @Override
    public String save(VenueSpec sheet) {
        Venue saved = venue;
        if (saved == null) {
            saved = Venue.stored(sheet, false);
        } else {
            saved.replace(sheet);
        }
        Venue.flush();
        return "/venues/" + saved.id();
    }
}
