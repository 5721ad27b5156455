package benchful.projects.writing;

import benchful.projects.ProjectSheet;
import benchful.projects.pictures.Picture;
import benchful.projects.pictures.PictureFile;
import benchful.web.forms.Faults;
import benchful.web.forms.SheetReader.Faulty;
import benchful.web.forms.SheetReader.Read;
import benchful.web.forms.SheetReader.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The last step of reading a project: every picture of it is fit to be stored, or the sheet is faulty. */
final class PictureIntake {
    private PictureIntake() {}

    /** @param stored names under which pictures are stored already and may stand without content */
    static Reading<ProjectSheet> fit(Reading<ProjectSheet> reading, Set<String> stored) {
        return reading instanceof Read<ProjectSheet> read ? fit(read, stored) : reading;
    }

    private static Reading<ProjectSheet> fit(Read<ProjectSheet> read, Set<String> stored) {
        Faults faults = new Faults();
        List<Picture> fit = new ArrayList<>();
        List<Picture> pictures = read.sheet().pictures();
        for (int i = 0; i < pictures.size(); i++) {
            fit.add(fit("/pictures/" + i + "/content", pictures.get(i), stored, faults));
        }
        return faults.list().isEmpty()
                ? new Read<>(read.sheet().withPictures(fit), read.tree())
                : new Faulty<>(faults.list(), read.tree(), Map.of());
    }

    private static Picture fit(String at, Picture picture, Set<String> stored, Faults faults) {
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
