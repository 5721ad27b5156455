package benchful.documents.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line may end: as Java says, but never between an apostrophe and the letters that follow it, nor within a time such as 21:00. */
final class LineBreaks implements FSTextBreaker {
    private static final char APOSTROPHE = '\u2019';

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.UK);
    private String text = "";

    @Override
    public int next() {
        int at = breaks.next();
        while (at != BreakIterator.DONE && at < text.length() && holdsTogether(text.charAt(at - 1), text.charAt(at))) {
            at = breaks.next();
        }
        return at;
    }

    private static boolean holdsTogether(char before, char after) {
        return before == APOSTROPHE && Character.isLetter(after) || before == ':' && Character.isDigit(after);
    }

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }
}
