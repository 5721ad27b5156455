package benchful.hazards;

import benchful.web.Uses;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the list and the page of a hazard show.
 *
 * @param own true for an entry that the tutor added
 * @param changed true where her text stands in for the library's
 */
@TemplateData
public record HazardCard(HazardSpec sheet, boolean own, boolean changed, List<Uses.Use> uses) {

    static HazardCard of(HazardSpec sheet, List<Uses.Use> uses) {
        boolean brought = HazardLibrary.brought(sheet.id());
        return new HazardCard(sheet, !brought, brought && !sheet.equals(LibraryFile.spelt().get(sheet.id())), uses);
    }

    /** A sign or pictogram, with whether there is a drawing of it. */
    @TemplateData
    public record Shown(String code, String name, boolean drawn) {
        static Shown of(HazardSpec.Sign sign) {
            return new Shown(sign.code(), sign.name(), Signs.svg(sign.code()).isPresent());
        }
    }

    public List<Shown> signs() {
        return Stream.concat(sheet.pictograms().stream(), sheet.signs().stream()).map(Shown::of).toList();
    }

    public List<Shown> drawn() {
        return signs().stream().filter(Shown::drawn).toList();
    }

    public Sourced sourced() {
        return Sourced.of(sheet);
    }

    /** The word that the label says first; null where it bears none. */
    public String signal() {
        return sheet.signal() == null ? null : sheet.signal() == HazardSpec.Signal.DANGER ? "Danger" : "Warning";
    }

    public String age() {
        return sheet.minimumAge() == null ? "none given" : "from %d years".formatted(sheet.minimumAge());
    }

    public String air() {
        if (sheet.ventilation() == null) {
            return "nothing said";
        }
        return switch (sheet.ventilation()) {
            case NONE -> "nothing special";
            case WINDOWS -> "open windows";
            case EXTRACTOR -> "an extractor";
        };
    }

    /** Null where it is not judged. */
    public String risk() {
        return sheet.severity() == null || sheet.likelihood() == null
                ? null
                : "%d × %d = %d".formatted(sheet.severity(), sheet.likelihood(), sheet.severity() * sheet.likelihood());
    }
}
