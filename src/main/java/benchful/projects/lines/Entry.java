package benchful.projects.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One line of a box with the lines that stand further in below it. Bullets and numbers of a list are taken off.
 *
 * @param text as it was written, by which it is known again
 * @param head the line itself
 * @param below what stands further in, as it stands there; empty where there is nothing
 */
record Entry(String text, String head, String below) {
    static final String BULLET = "^(?:[-*•·–—▪◦‣☐□✓✔]|\\d{1,3}[.)]|[a-zA-Z]\\)|\\[[ xX]?\\])[ \\t]+";
    static final String UNSEEN = "[\\u200B-\\u200D\\u2060\\uFEFF\\p{Cntrl}&&[^\\t\\n]]";

    /** @param nested whether what stands further in belongs to the line above it */
    static List<Entry> of(String box, boolean nested) {
        List<String> lines = outdented(box.replace("\r\n", "\n").replace('\r', '\n').replaceAll(UNSEEN, "").lines().toList());
        List<Entry> entries = new ArrayList<>();
        int from = 0;
        while (from < lines.size()) {
            int to = from + 1;
            while (nested && to < lines.size() && (lines.get(to).isBlank() || further(lines.get(to)))) {
                to++;
            }
            entry(lines.subList(from, to)).ifFilled(entries);
            from = to;
        }
        return entries;
    }

    private static Entry entry(List<String> lines) {
        String in = lines.stream().skip(1).filter(l -> !l.isBlank()).findFirst().map(l -> l.substring(0, l.length() - l.stripLeading().length())).orElse("");
        String below = lines.stream().skip(1).map(l -> l.startsWith(in) ? l.substring(in.length()) : l.stripLeading()).collect(Collectors.joining("\n"));
        String head = lines.get(0).replace('\u00A0', ' ').strip();
        return new Entry(String.join("\n", lines).strip(), head.replaceFirst(BULLET, "").strip(), below.isBlank() ? "" : ends(below));
    }

    private void ifFilled(List<Entry> entries) {
        if (!head.isEmpty() || !below.isEmpty()) {
            entries.add(this);
        }
    }

    /** Without blank lines before and after. */
    private static String ends(String below) {
        return below.replaceFirst("^(?:[ \\t]*\\n)+", "").stripTrailing();
    }

    private static boolean further(String line) {
        return line.startsWith(" ") || line.startsWith("\t");
    }

    /** What all lines stand in by is the page's, not theirs. */
    private static List<String> outdented(List<String> lines) {
        int most = lines.stream().filter(l -> !l.isBlank()).mapToInt(l -> l.length() - l.stripLeading().length()).min().orElse(0);
        return lines.stream().map(l -> l.isBlank() ? "" : l.substring(most)).toList();
    }

    /** The words of a text as they are written below a line. */
    static String under(String head, String below) {
        return below.isEmpty() ? head : head + Arrays.stream(below.split("\n", -1)).map(l -> l.isEmpty() ? "\n" : "\n  " + l).collect(Collectors.joining());
    }
}
