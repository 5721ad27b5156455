package benchful.plans.pages;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Supplier;
import benchful.classes.ChoiceRules;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.classes.PhotoSpec;
import benchful.classes.Photographs;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.projects.Project;
import benchful.projects.pictures.PictureFile;
import benchful.venues.Venue;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Stores a class from its file, with its project, room, materials and suppliers where none of that name is here yet; what is
 * here stays as it is. Stock is not taken over: what lies on another's shelf does not lie on this one.
 */
@ApplicationScoped
class ClassImport {
    private final EntityManager database;
    private final Clock clock;
    private final Photographs photographs;

    ClassImport(EntityManager database, Clock clock, Photographs photographs) {
        this.photographs = photographs;
        this.database = database;
        this.clock = clock;
    }

    /** What keeps the file from being stored beside what is here; nothing where it can be. */
    @Transactional
    List<Fault> faults(ClassFile file) {
        List<Fault> faults = new ArrayList<>();
        if (file.setup().meetings().isEmpty()) {
            faults.add(new Fault("/class/meetings", "Give the class at least one meeting."));
        }
        Project.byName(file.project().name()).ifPresent(here -> SetupRules.check(file.setup(), here.toSpec()).forEach(fault -> faults.add(new Fault(
                "/class" + fault.pointer(), "With the project of this name that is here: " + fault.detail()))));
        for (int i = 0; i < file.materials().size(); i++) {
            faults.addAll(unsold(file, i));
        }
        ChoiceRules.unlisted(file.setup(), name -> file.materials().stream().anyMatch(m -> m.name().equals(name)) || Material.isListed(name))
                .forEach(fault -> faults.add(new Fault("/class" + fault.pointer(), fault.detail())));
        for (int i = 0; i < file.photos().size(); i++) {
            if (PictureFile.photo(file.photos().get(i).content()) instanceof PictureFile.Unfit unfit) {
                faults.add(new Fault("/photos/%d/content".formatted(i), unfit.sentence()));
            }
        }
        return faults;
    }

    /** As they are fit to be kept; one that was exported here is so already, and stays byte for byte. */
    private static Stream<PhotoSpec> fit(PhotoSpec photo) {
        return PictureFile.photo(photo.content()) instanceof PictureFile.Fit fit ? Stream.of(new PhotoSpec(photo.caption(), fit.mediaType(), fit.content())) : Stream.empty();
    }

    private static List<Fault> unsold(ClassFile file, int material) {
        List<String> sellers = Stream.concat(file.suppliers().stream().map(s -> s.name()), Supplier.all().stream().map(Supplier::name)).toList();
        MaterialSpec sheet = file.materials().get(material);
        List<Fault> faults = new ArrayList<>();
        for (int offer = 0; offer < sheet.offers().size(); offer++) {
            String seller = sheet.offers().get(offer).supplier();
            if (sellers.stream().noneMatch(seller::equalsIgnoreCase)) {
                faults.add(new Fault("/materials/%d/offers/%d/supplier".formatted(material, offer),
                        "There is no supplier “%s” in the file or here.".formatted(seller)));
            }
        }
        return faults;
    }

    /** @return the stored class's identifier */
    @Transactional
    long store(ClassFile file) {
        file.suppliers().stream().filter(s -> Supplier.byName(s.name()).isEmpty()).forEach(s -> Supplier.stored(s, false));
        file.materials().stream().sorted(Comparator.comparing(m -> m.variantOf() != null)).filter(m -> Material.byName(m.name()).isEmpty())
                .forEach(m -> Material.stored(m, name -> Supplier.byName(name).orElseThrow(), false, LocalDate.now(clock)));
        database.flush();
        Project project = Project.byName(file.project().name()).orElseGet(() -> Project.stored(file.project(), false, clock.instant()));
        CraftClass brought = CraftClass.brought(project, venue(file), file.setup());
        photographs.keep(brought, file.photos().stream().flatMap(ClassImport::fit).toList());
        return brought.id();
    }

    private static Venue venue(ClassFile file) {
        return file.venue() == null ? null : Venue.byName(file.venue().name()).orElseGet(() -> Venue.stored(file.venue(), false));
    }
}
