package benchful.venues;

import benchful.web.Uses;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the list and the page of a venue show. */
@TemplateData
public record VenueCard(long id, boolean sample, VenueSpec sheet, List<Uses.Use> uses) {

    static VenueCard of(Venue venue, List<Uses.Use> uses) {
        return new VenueCard(venue.id(), venue.sample(), venue.toSpec(), uses);
    }

    /** By name. */
    public Map<String, Integer> tools() {
        Map<String, Integer> sorted = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        sorted.putAll(sheet.tools());
        return sorted;
    }

    public String ventilation() {
        if (sheet.ventilation() == null) {
            return "not known";
        }
        return switch (sheet.ventilation()) {
            case NONE -> "none";
            case WINDOWS -> "windows that open";
            case EXTRACTOR -> "extractor";
        };
    }

    public String water() {
        return known(sheet.water());
    }

    public String firstAid() {
        return known(sheet.firstAid());
    }

    public String seats() {
        return sheet.seats() == null ? "not known" : sheet.seats().toString();
    }

    public String sockets() {
        return sheet.sockets() == null ? "not known" : sheet.sockets().toString();
    }

    private static String known(Boolean there) {
        if (there == null) {
            return "not known";
        }
        return there ? "yes" : "no";
    }
}
