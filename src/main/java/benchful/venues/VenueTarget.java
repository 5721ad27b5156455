package benchful.venues;

import benchful.core.Fault;
import benchful.web.forms.SheetPost;
import java.util.List;
import java.util.Optional;

/** A venue that takes a sheet from its form. */
record VenueTarget(Venue venue) implements SheetPost.Target<VenueSheet> {

    @Override
    public long version() {
        return venue == null ? 0 : venue.version();
    }

    @Override
    public VenueSheet stored() {
        return venue.toSheet();
    }

    @Override
    public List<Fault> faults(VenueSheet sheet) {
        Optional<Venue> namesake = Venue.byName(sheet.name());
        return namesake.isEmpty() || namesake.get() == venue
                ? List.of()
                : List.of(new Fault("/name", "There is a venue called “%s” already. Give this one another name.".formatted(namesake.get().name())));
    }

    @Override
    public String save(VenueSheet sheet) {
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
