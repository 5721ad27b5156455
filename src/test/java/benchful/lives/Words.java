package benchful.lives;

import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.Connection;

/** What no answer may hold: names of the program's classes, traces, and that the program failed at one thing while it shows all others. */
public final class Words {
    private static final Pattern FOREIGN = Pattern.compile(
            "\\b(?:java|jakarta|javax|com|org|io)\\.[a-z]{1,30}\\.[\\w.]{0,200}[A-Z]\\w|\\bbenchful\\.(?:core|web|plans|projects)\\.\\w"
                    + "|\\b[A-Z]\\w{0,60}(?:Exception|Error)\\b(?: at|:)|\\bat [\\w.$]{1,200}\\(\\w{1,60}\\.java"
                    + "|the program (?:itself )?failed at|more memory than the program has");

    private Words() {}

    static List<String> foreign(Connection.Response answer) {
        String type = answer.contentType();
        boolean read = type != null && (type.startsWith("text/html") || type.contains("json"));
        return read ? foreign(answer.body()) : List.of();
    }

    public static List<String> foreign(String text) {
        return FOREIGN.matcher(text).results().map(m -> m.group()).limit(3).toList();
    }
}
