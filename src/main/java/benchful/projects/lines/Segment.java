package benchful.projects.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A part of a line between commas, semicolons or the tabs of a table.
 *
 * @param text without quotation marks
 * @param quoted whether it stood between quotation marks and means only what it says
 * @param rest what follows the quotation mark within the part
 * @param from where it begins in the line
 * @param to where it ends
 */
record Segment(String text, boolean quoted, String rest, int from, int to) {
    /** Signs within which a name could be taken for something else. */
    private static final Pattern SIGNS = Pattern.compile("[,;:\\t\"()]|^\\W|^\\d|\\d$");

    static List<Segment> of(String line) {
        char parting = isTable(line) ? '\t' : ',';
        boolean closed = closed(line);
        List<Segment> segments = new ArrayList<>();
        int from = 0;
        int depth = 0;
        boolean quoted = false;
        for (int i = 0; i <= line.length(); i++) {
            char c = i < line.length() ? line.charAt(i) : parting;
            if (c == '"' && (quoted || opens(line, from, i))) {
                quoted = !quoted;
            } else if (!quoted && closed && (c == '(' || c == ')')) {
                depth += c == '(' ? 1 : -1;
            }
            if (i == line.length() || !quoted && depth == 0 && parts(line, i, parting)) {
                segment(line, from, i).ifPresent(segments::add);
                from = i + 1;
            }
        }
        return segments;
    }

    /** An inch follows its number, a quotation mark a blank. */
    private static boolean opens(String line, int from, int at) {
        return (line.substring(from, at).isBlank() || line.charAt(at - 1) == ' ') && line.indexOf('"', at + 1) >= 0;
    }

    /** Whether it comes from a table, whose cells stand between tabs. */
    static boolean isTable(String line) {
        return line.replaceAll("\"[^\"]*\"", "").indexOf('\t') >= 0;
    }

    private static boolean parts(String line, int at, char parting) {
        char c = line.charAt(at);
        boolean decimal = c == ',' && at > 0 && at + 1 < line.length() && Character.isDigit(line.charAt(at - 1)) && Character.isDigit(line.charAt(at + 1));
        return parting == '\t' ? c == '\t' : (c == ',' || c == ';') && !decimal;
    }

    /** Whether every bracket is closed; else they are signs like others, as in a smile. */
    private static boolean closed(String line) {
        int depth = 0;
        for (char c : line.toCharArray()) {
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth < 0) {
                return false;
            }
        }
        return depth == 0;
    }

    private static Optional<Segment> segment(String line, int from, int to) {
        String text = line.substring(from, to).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        int end = text.startsWith("\"") ? closing(text) : -1;
        return Optional.of(end < 0 ? new Segment(text, false, "", from, to)
                : new Segment(text.substring(1, end).replace("\"\"", "\"").strip(), true, text.substring(end + 1).strip(), from, to));
    }

    private static int closing(String text) {
        for (int i = 1; i < text.length(); i++) {
            if (text.charAt(i) == '"' && (i + 1 == text.length() || text.charAt(i + 1) != '"')) {
                return i;
            } else if (text.charAt(i) == '"') {
                i++;
            }
        }
        return -1;
    }

    /** Without the quotation marks about the whole. */
    static String unquoted(String text) {
        return text.length() > 1 && text.startsWith("\"") && text.endsWith("\"") ? text.substring(1, text.length() - 1).replace("\"\"", "\"") : text;
    }

    /** Between quotation marks where it could be taken for something else. */
    static String quotedIfNeeded(String text, boolean always) {
        return always || SIGNS.matcher(text).find() ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
