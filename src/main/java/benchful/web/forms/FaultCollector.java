package benchful.web.forms;

import benchful.core.Fault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Gathers what is wrong with a sheet, rule by rule. */
public final class FaultCollector {
    private final List<Fault> found = new ArrayList<>();

    /** @param sentence a format for {@code parts} that says how to mend it */
    public void add(String pointer, String sentence, Object... parts) {
        found.add(new Fault(pointer, sentence.formatted(parts)));
    }

    /** @return {@code holds}, so that a rule that needs another can ask for it */
    public boolean require(boolean holds, String pointer, String sentence, Object... parts) {
        if (!holds) {
            add(pointer, sentence, parts);
        }
        return holds;
    }

    /** No two rows of a list may bear one name, whatever its case. */
    public <T> void unlike(String list, List<T> rows, String key, Function<T, String> name) {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String written = name.apply(rows.get(i));
            Integer earlier = first.putIfAbsent(written.strip().toLowerCase(Locale.ROOT), i);
            require(earlier == null, "%s/%d/%s".formatted(list, i, key),
                    "“%s” is there already, as number %d. Give each its own name.", written, earlier == null ? 0 : earlier + 1);
        }
    }

    public List<Fault> list() {
        return List.copyOf(found);
    }
}
