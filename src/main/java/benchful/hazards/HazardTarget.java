package benchful.hazards;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;

/**
 * A hazard that takes a sheet from its form.
 *
 * @param id of the entry; null for a new one
 * @param hazard what the tutor wrote about it before; null for nothing
 */
record HazardTarget(String id, Hazard hazard) implements SpecPost.Target<HazardSpec> {

    @Override
    public long version() {
        return hazard == null ? 0 : hazard.version();
    }

    @Override
    public HazardSpec stored() {
        return hazard == null ? LibraryFile.spelt().get(id) : hazard.toSpec();
    }

    @Override
    public List<Fault> faults(HazardSpec sheet) {
        if (id != null && !id.equals(sheet.id())) {
            return List.of(new Fault("/id", "Materials, tools and steps know this hazard as “%s”. Keep that short name.".formatted(id)));
        }
        boolean taken = id == null && (HazardLibrary.brought(sheet.id()) || Hazard.byId(sheet.id()).isPresent());
        return taken ? List.of(new Fault("/id", "There is a hazard with this short name already. Give this one another.")) : List.of();
    }

    @Override
    public String save(HazardSpec sheet) {
        if (hazard == null) {
            Hazard.stored(sheet);
        } else {
            hazard.replace(sheet);
        }
        Hazard.flush();
        return "/hazards/" + sheet.id();
    }
}
