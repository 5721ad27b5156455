package benchful.documents.lists;

import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.documents.parts.Signage;
import benchful.hazards.HazardSpec.Sign;
import benchful.studio.StudioSpec;
import benchful.venues.VenueSpec;
import io.quarkus.qute.RawString;
import java.util.List;

/**
 * The card by the door of a room. What the venue does not say stays as a line to write on.
 *
 * @param place name and address of the room, to be read out on the telephone; may be empty
 */
public record EmergencyContent(PrintHead head, String place, List<Line> lines) {
    private static final List<PrintHead.Bookmark> BOOKMARKS = List.of(new PrintHead.Bookmark("In an emergency", "top"));

    /** @param signs those that hang at the place itself; may be none */
    public record Line(String label, String text, Signage signs) {}

    /** For the room of a class. */
    public static EmergencyContent of(PrintSource source, PrintOptions options, PictureBag bag) {
        return of(source.file().venue(), PrintHead.of(source, "Emergency card: " + source.title(), style(options), options.paper(), options.version(), BOOKMARKS), bag);
    }

    /** For a room, whoever meets in it. */
    public static EmergencyContent of(VenueSpec venue, StudioSpec studio, PrintOptions options, PictureBag bag) {
        return of(venue, PrintHead.of(venue.name(), studio, "Emergency card: " + venue.name(), style(options), options.paper(), options.version(), BOOKMARKS), bag);
    }

    private static RawString style(PrintOptions options) {
        return Stylesheet.of(options.paper(), options.version());
    }

    private static EmergencyContent of(VenueSpec venue, PrintHead head, PictureBag bag) {
        VenueSpec.Emergency known = venue == null || venue.emergency() == null ? VenueSpec.Emergency.NONE : venue.emergency();
        PrintedSigns signs = new PrintedSigns(bag);
        return new EmergencyContent(head, venue == null ? "" : venue.place(), List.of(
                line("Call", known.call(), Signage.NONE),
                line("Ways out", known.exits(), Signage.NONE),
                line("Everybody meets at", known.assembly(), signs.of(new Sign("E007", "Evacuation assembly point"))),
                line("Fire alarm and extinguisher", known.fire(), Signage.NONE),
                line("First-aid box", known.firstAid(), signs.of(new Sign("E003", "First aid"))),
                line("Defibrillator", known.defibrillator(), signs.of(new Sign("E010", "Automated external heart defibrillator"))),
                line("Nearest hospital", known.hospital(), Signage.NONE),
                line("Who looks after the building", known.keeper(), Signage.NONE),
                line("First aider today", null, Signage.NONE)));
    }

    private static Line line(String label, String text, Signage signs) {
        return new Line(label, text == null ? "" : text, signs);
    }
}
