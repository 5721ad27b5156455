package benchful.hazards;

import benchful.catalogue.HazardNames;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** The hazards as the tutor has them: the library's, with her own texts in place of those she changed, and her own entries. */
@ApplicationScoped
public class HazardLibrary implements HazardNames {

    /** By name; where an own text can't be read, the library's stands. */
    @Transactional
    public List<HazardSpec> all() {
        Map<String, HazardSpec> all = new LinkedHashMap<>(LibraryFile.spelt());
        Hazard.all().forEach(h -> h.readable().ifPresent(sheet -> all.put(h.id(), sheet)));
        return all.values().stream().sorted(Comparator.comparing(HazardSpec::name, String.CASE_INSENSITIVE_ORDER)).toList();
    }

    /** Those with these short names, in that order; names that are not in the library are left out. */
    @Transactional
    public List<HazardSpec> find(Collection<String> ids) {
        Map<String, HazardSpec> own = new HashMap<>();
        Hazard.withIds(ids).stream().filter(h -> !brought(h.id()) || h.readable().isPresent()).forEach(h -> own.put(h.id(), h.toSpec()));
        return ids.stream().distinct()
                .map(id -> own.getOrDefault(id, LibraryFile.spelt().get(id)))
                .filter(Objects::nonNull)
                .toList();
    }

    /** Own texts that can't be read. */
    @Transactional
    List<Trouble> broken() {
        return Tried.troubles(Hazard.all().stream().map(h -> Tried.of(h::toSpec, failure -> Trouble.of("The hazard “%s”".formatted(h.id()), List.of(), failure))).toList());
    }

    @Transactional
    public Optional<HazardSpec> find(String id) {
        return find(List.of(id)).stream().findFirst();
    }

    @Override
    public Map<String, String> byId() {
        return all().stream().collect(Collectors.toMap(HazardSpec::id, HazardSpec::name, (a, b) -> a, LinkedHashMap::new));
    }

    /** True where the program brings an entry along, changed or not. */
    static boolean brought(String id) {
        return LibraryFile.byId().containsKey(id);
    }
}
