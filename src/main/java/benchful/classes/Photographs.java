package benchful.classes;

import java.util.List;

/** Asked by whoever exports a class or brings it in: photographs of the pieces that it finished. Who reviews classes keeps them. */
public interface Photographs {

    /** Those of a class, as they were added. */
    List<PhotoSpec> of(CraftClass craftClass);

    /** Keeps more of them, which are fit to be kept. */
    void keep(CraftClass craftClass, List<PhotoSpec> photos);
}
