package benchful.projects.writing;

import benchful.projects.ProjectSpec;
import benchful.projects.pictures.Picture;
import benchful.projects.pictures.PictureFile;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.SpecReader.Faulty;
import benchful.web.forms.SpecReader.Read;
import benchful.web.forms.SpecReader.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The last step of reading a project: every picture of it is fit to be stored, or the sheet is faulty. */
final class PictureIntake {
    private PictureIntake() {}

    /** @param stored names under which pictures are stored already and may stand without content */
    static Reading<ProjectSpec> fit(Reading<ProjectSpec> reading, Set<String> stored) {
        return reading instanceof Read<ProjectSpec> read ? fit(read, stored) : reading;
    }

    private static Reading<ProjectSpec> fit(Read<ProjectSpec> read, Set<String> stored) {
        FaultCollector faults = new FaultCollector();
        List<Picture> fit = new ArrayList<>();
        List<Picture> pictures = read.sheet().pictures();
        for (int i = 0; i < pictures.size(); i++) {
            fit.add(fit("/pictures/" + i + "/content", pictures.get(i), stored, faults));
        }
        return faults.list().isEmpty()
                ? new Read<>(read.sheet().withPictures(fit), read.tree())
                : new Faulty<>(faults.list(), read.tree(), Map.of());
    }

    private static Picture fit(String at, Picture picture, Set<String> stored, FaultCollector faults) {
        if (!picture.hasContent()) {
            faults.require(stored.contains(picture.name()), at, "Pick a file for the picture “%s”.", picture.name());
            return picture;
        }
        PictureFile file = PictureFile.of(picture.content());
        if (file instanceof PictureFile.Fit f) {
            return new Picture(picture.name(), f.mediaType(), picture.alt(), f.content());
        }
        faults.add(at, "%s", ((PictureFile.Unfit) file).sentence());
        return picture;
    }
}
