package benchful.catalogue;

import benchful.core.Fault;
import benchful.web.Nearest;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The hazards that materials, tools and steps may carry; the hazard library answers. */
public interface HazardNames {

    /** By short name, as sheets write it, the name that people read; in order of the latter. */
    Map<String, String> byId();

    /**
     * The short names that are none of the library's: nothing would be printed of their dangers.
     *
     * @param at the place of the list
     */
    static List<Fault> unknown(String at, List<String> ids, Collection<String> known) {
        return IntStream.range(0, ids.size()).filter(i -> !known.contains(ids.get(i)))
                .mapToObj(i -> new Fault(at + "/" + i, unknown(ids.get(i), known)))
                .toList();
    }

    /** What is wrong with a short name that is not in the library, and how to mend it. */
    static String unknown(String id, Collection<String> known) {
        String mend = Nearest.to(id, known).map(near -> "Did you mean “%s”? If not, choose another of its short names".formatted(near))
                .orElse("Choose one of its short names");
        return "“%s” is not in the hazard library. %s, or add this one there first.".formatted(id, mend);
    }
}
