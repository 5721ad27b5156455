package benchful.reviews;

import benchful.classes.CraftClass;
import benchful.classes.PhotoSpec;
import benchful.classes.Photographs;
import benchful.projects.pictures.PictureFile;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;

/** Gives the photographs of a class to its file, and takes them from it. */
@ApplicationScoped
class KeptPhotographs implements Photographs {
    @Override
    public List<PhotoSpec> of(CraftClass craftClass) {
        return ClassPhoto.of(craftClass).stream().map(p -> new PhotoSpec(p.caption.isEmpty() ? null : p.caption, p.mediaType(), p.content())).toList();
    }

    @Override
    public void keep(CraftClass craftClass, List<PhotoSpec> photos) {
        photos.forEach(p -> ClassPhoto.of(craftClass, Objects.requireNonNullElse(p.caption(), "").strip(), new PictureFile.Fit(p.mediaType(), p.content())).persist());
    }
}
