package benchful.projects.lines;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpecs;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Texts broken in every way are still read: each line becomes a row, and each of its words is taken for something. Short in every
 * build, {@code -Dbenchful.fuzz=20000} for as many texts.
 */
class LinesFuzzTest {
    private static final List<String> SCRAPS = List.of("\t", "\n", "\n  ", "\r\n", ",", ", ", ";", ":", ": ", "\"", "(", ")", " x ", "×", "½", "1/0", "0/0 m", "-", " – ", "•  ", "1. ", "min",
            " 10 min", "4-6-10 min each", "1:30", "99:99", "999999999 min", "12 x 9 cm", "2 pieces of ", " by ", "5%", "%", "at most ", "after ", "hazard ", "choose ", "or ", "£3", "\0", "\u200B", "\uFEFF",
            "\uD83E\uDDF5", "\uD83E", "漢字", "e\u0301", "* / +", "ceil(", "awg(20)", "1e99", "=", "'", "″", "wait:", "make: ", "ahead\t", "a".repeat(150), "1".repeat(40), " ".repeat(60), "((((", "each their own",
            " shared by 2", ", in pairs", "may run over ", "somebody beside each student");

    private final SplittableRandom random = new SplittableRandom(20_27);

    @Test
    void losesNoWordOfAnyText() {
        int texts = Integer.getInteger("benchful.fuzz", 1500);
        for (int i = 0; i < texts; i++) {
            ObjectNode sheet = (ObjectNode) ProjectFiles.READER.written(ProjectSpecs.generated(random.nextInt(50)));
            LineBoxes boxes = new LineBoxes(sheet, Map.of("hammering", "Hammering"));
            String list = LineBoxes.LISTS.get(random.nextInt(4));
            String were = boxes.written(list);
            String text = mutated(were);
            check(sheet.deepCopy(), list, text, were);
            check(SpecFormat.json().createObjectNode(), list, text, "");
        }
    }

    private static void check(ObjectNode sheet, String list, String text, String were) {
        LineBoxes boxes = new LineBoxes(sheet, Map.of("hammering", "Hammering"));
        Understanding understanding = boxes.read(list, text, were);
        assertThat(sheet.at(list).size()).as(text).isEqualTo(understanding.lines().size());
        for (Understanding.Line line : understanding.lines()) {
            assertThat(line.text().isBlank()).as(text).isFalse();
            if (!line.parts().isEmpty() && !(list.equals("/sizes") && text.indexOf('\t') >= 0)) {
                String taken = line.parts().stream().map(Part::words).collect(Collectors.joining(" | "));
                Map<Integer, Long> there = letters(taken);
                letters(line.text().replaceFirst(Entry.BULLET, "")).forEach((letter, number) -> assertThat(there.getOrDefault(letter, 0L))
                        .as("“%s” of “%s”: %s", Character.toString(letter), line.text(), line.parts()).isGreaterThanOrEqualTo(number));
            }
        }
        boxes.written(list);
    }

    /** How often each letter and digit is there, without the words that only join others, and the numbers of a list. */
    private static Map<Integer, Long> letters(String text) {
        String bare = text.replaceAll(Entry.UNSEEN, "")
                .replaceAll("(?<![\\p{L}])(?i:x|of|in all|only|there are|in the room|usually|about|with|using|uses?|tools?)(?![\\p{L}])", "");
        return bare.codePoints().filter(Character::isLetterOrDigit).boxed().collect(Collectors.groupingBy(c -> c, Collectors.counting()));
    }

    private String mutated(String text) {
        StringBuilder mutated = new StringBuilder(text);
        for (int i = random.nextInt(1, 7); i > 0; i--) {
            int at = random.nextInt(mutated.length() + 1);
            int to = Math.min(mutated.length(), at + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> mutated.delete(at, to);
                case 1 -> mutated.insert(at, mutated.substring(at, to));
                case 2 -> mutated.replace(at, to, SCRAPS.get(random.nextInt(SCRAPS.size())));
                default -> mutated.insert(at, SCRAPS.get(random.nextInt(SCRAPS.size())));
            }
        }
        return mutated.toString();
    }
}
