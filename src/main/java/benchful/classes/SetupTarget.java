package benchful.classes;

import benchful.catalogue.Material;
import benchful.core.Fault;
import benchful.venues.Venue;
import benchful.web.forms.SpecPost;
import java.util.List;

/** Where the setup of a class is stored, or will be. */
public record SetupTarget(CraftClass craftClass, Venue venue) implements SpecPost.Target<ClassSetup> {
    @Override
    public long version() {
        return craftClass.version();
    }

    @Override
    public ClassSetup stored() {
        return craftClass.setup();
    }

    @Override
    public List<Fault> faults(ClassSetup sheet) {
        return ChoiceRules.unlisted(sheet, Material::isListed);
    }

    @Override
    public String save(ClassSetup sheet) {
        craftClass.plan(sheet, venue);
        craftClass.persistAndFlush();
        return "/classes/" + craftClass.id();
    }
}
