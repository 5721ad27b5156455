package benchful.venues;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;
import java.util.Optional;

/** A venue that takes a sheet from its form. */
record VenueTarget(Venue venue) implements SpecPost.Target<VenueSpec> {

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
        Optional<Venue> namesake = Venue.byName(sheet.name());
        return namesake.isEmpty() || namesake.get() == venue
                ? List.of()
                : List.of(new Fault("/name", "There is a venue called “%s” already. Give this one another name.".formatted(namesake.get().name())));
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
