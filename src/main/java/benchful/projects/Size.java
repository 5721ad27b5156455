package benchful.projects;

import benchful.core.quantity.Quantity;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A named choice of measures for one piece: small, with a length of 42 cm. Every measure of the sheet has its value here.
 *
 * @param takes what this size takes of another material or variant, or none of
 */
public record Size(
        @Required @Filled(40) @Mend("Give the size a name, such as “Medium” or “45 cm”.") String name,
        @Length(most = 60) Map<@FormulaName String, Quantity> measures,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) @Length(most = 60) List<Taken> takes) {
    public Size {
        measures = measures == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(measures));
        takes = ProjectSpec.copy(takes);
    }

    /** A size that takes what the lines say. */
    public Size(String name, Map<String, Quantity> measures) {
        this(name, measures, null);
    }

    /**
     * What a size takes otherwise than a line says.
     *
     * @param of the line's material
     * @param use a material of the catalogue, or a variant; null for none at all
     */
    public record Taken(
            @Required @Filled(120) @Mend("Name the material of a line.") String of,
            @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 120) @Mend("Name another material, or leave it empty where this size takes none.") String use) {}

    /** What is taken in place of a line's material; nothing where that is taken. */
    public Optional<Taken> taken(String material) {
        return takes.stream().filter(t -> t.of().equals(material)).findFirst();
    }

    /** True where this size takes none of a line's material. */
    public boolean without(String material) {
        return taken(material).filter(t -> t.use() == null).isPresent();
    }

    /** The same where a material has got another name. */
    Size renamed(String from, String to) {
        return new Size(name, measures, takes.stream().map(t -> new Taken(renamed(t.of(), from, to), t.use() == null ? null : renamed(t.use(), from, to))).toList());
    }

    private static String renamed(String name, String from, String to) {
        return name.equalsIgnoreCase(from) ? to : name;
    }
}
