package benchful.classes;

import benchful.catalogue.Material;
import benchful.core.Fault;
import benchful.venues.Venue;
import benchful.web.SheetPost;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Where the setup of a class is stored, or will be. */
public record SetupTarget(CraftClass craftClass, Venue venue) implements SheetPost.Target<ClassSetup> {
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
        List<Fault> faults = new ArrayList<>(unknown("/instead/", sheet.instead()));
        for (int i = 0; i < sheet.students().size(); i++) {
            faults.addAll(unknown("/students/" + i + "/instead/", sheet.students().get(i).instead()));
        }
        return faults;
    }

    private static List<Fault> unknown(String at, List<ClassSetup.Instead> instead) {
        return IntStream.range(0, instead.size()).filter(i -> Material.byName(instead.get(i).use()).filter(m -> m.name().equals(instead.get(i).use())).isEmpty())
                .mapToObj(i -> new Fault(at + i + "/use", "“%s” is not among your materials. Choose one of them, or write it down there first.".formatted(instead.get(i).use())))
                .toList();
    }

    @Override
    public String save(ClassSetup sheet) {
        craftClass.plan(sheet, venue);
        craftClass.persistAndFlush();
        return "/classes/" + craftClass.id();
    }
}
