package benchful.catalogue;

import java.util.Map;

/** The hazards a material may carry; the hazard library answers. */
public interface HazardNames {

    /** By short name, as sheets write it, the name that people read; in order of the latter. */
    Map<String, String> byId();
}
