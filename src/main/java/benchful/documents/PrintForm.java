package benchful.documents;

import benchful.core.Fault;
import benchful.documents.paper.LabelKind;
import benchful.documents.paper.Version;
import benchful.studio.StudioSpec;
import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How print-outs are asked for on their page: what was chosen and typed, kept, with what is wrong with it. */
@TemplateData
public record PrintForm(Map<String, String> typed, List<Fault> faults) {
    private static final Map<String, String> FIRST = Map.of("version", Version.NORMAL.slug(), "for", "size", "labels", LabelKind.KITS.slug(), "sheet", "1",
            "start", "1", "right", "0", "down", "0");

    public PrintForm {
        typed = Map.copyOf(typed);
        faults = List.copyOf(faults);
    }

    /**
     * @param address where phones reach the program, as far as the program knows
     * @param studio  whose paper it begins with
     */
    static PrintForm of(MultivaluedMap<String, String> query, String address, StudioSpec studio) {
        Map<String, String> typed = new LinkedHashMap<>(FIRST);
        typed.put("paper", studio.printsOn().slug());
        typed.put("address", address);
        query.forEach((name, values) -> typed.put(name, values.get(0).strip()));
        return new PrintForm(typed, List.of());
    }

    PrintForm with(List<Fault> found) {
        return new PrintForm(typed, found);
    }

    public String value(String name) {
        return typed.getOrDefault(name, "");
    }

    public boolean is(String name, String value) {
        return value(name).equals(value);
    }

    public String id(String name) {
        return "print-" + name;
    }

    /** What is wrong with a field; null for nothing. */
    public String fault(String name) {
        return faults.stream().filter(fault -> fault.pointer().equals(name)).map(Fault::detail).findFirst().orElse(null);
    }
}
