package benchful.web.tables;

import java.util.regex.Pattern;

/**
 * The text of a cell as it goes into a file. A name that a spreadsheet would take for a formula, such as {@code =A1}, gets an
 * apostrophe in front, and loses it when the file is read back; a plain number keeps its sign and stays a number.
 */
final class GuardedCell {
    /** Signs with which a spreadsheet's formulas begin, the wide ones of East Asian keyboards too (common practice, no source). */
    private static final String FORMULA = "\\s*+[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*+";
    private static final Pattern RUN = Pattern.compile("'*+" + FORMULA, Pattern.DOTALL);
    private static final Pattern GUARDED = Pattern.compile("'++" + FORMULA, Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[-+]\\d{1,15}+(?:[.,]\\d{1,12}+)?+");

    private GuardedCell() {}

    static String written(String text) {
        return RUN.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }

    static String read(String cell) {
        String text = cell.strip();
        return GUARDED.matcher(text).matches() ? text.substring(1).strip() : text;
    }
}
