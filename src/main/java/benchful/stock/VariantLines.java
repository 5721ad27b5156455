package benchful.stock;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Variants as they are written down on the page of their material, a line each.
 *
 * @param text   as it was typed
 * @param words  what distinguishes each, once
 * @param faults why nothing of it can be stored; each names its line
 */
record VariantLines(String text, List<String> words, List<Fault> faults) {
    private static final String PLACE = "/words";
    private static final int MOST = 100;
    private static final int MOST_LETTERS = 120;

    static final VariantLines NONE = new VariantLines("", List.of(), List.of());

    static VariantLines of(String typed, Material material) {
        String text = typed == null ? "" : typed.replace("\r\n", "\n").replace('\0', '\uFFFD');
        List<String> words = text.lines().map(String::strip).filter(word -> !word.isEmpty()).distinct().toList();
        return new VariantLines(text, words, Stream.concat(faults(words, material), words.stream().flatMap(word -> faults(word, material))).toList());
    }

    SpecForm form() {
        return SpecForm.faulty(SpecFormat.json().createObjectNode().put("words", text), faults, 0);
    }

    private static Stream<Fault> faults(List<String> words, Material material) {
        if (material.material() != null) {
            return fault("“%s” is itself a variant of “%s”: add them there.".formatted(material.name(), material.material().name()));
        }
        return words.isEmpty() ? fault("Write at least one line, such as ivory.")
                : words.size() > MOST ? fault("These are %d lines; write at most %d at once.".formatted(words.size(), MOST)) : Stream.of();
    }

    private static Stream<Fault> faults(String word, Material material) {
        int letters = MaterialSpec.nameOf(material.name(), word).length();
        return letters <= MOST_LETTERS ? Stream.of()
                : fault("“%s” is too long: with the name of its material it has %d letters, and %d are the most.".formatted(word, letters, MOST_LETTERS));
    }

    private static Stream<Fault> fault(String detail) {
        return Stream.of(new Fault(PLACE, detail));
    }
}
