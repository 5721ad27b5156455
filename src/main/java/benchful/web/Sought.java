package benchful.web;

import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * What a long list is narrowed to, and which page of it is shown.
 *
 * @param find words that must stand in the name; blank for all
 * @param page from 1
 */
public record Sought(String find, int page) {
    /** Lines of one page: enough to look through, few enough to load at once. */
    public static final int LINES = 50;
    private static final int LAST = 1_000_000;

    public Sought {
        find = find == null ? "" : find.strip();
        page = Math.max(1, Math.min(LAST, page));
    }

    /** As the address asks for it: {@code find} and {@code page}. */
    public static Sought of(MultivaluedMap<String, String> query) {
        return of(query, "find", "page");
    }

    /** The same with names of its own, where a page holds more than one list. */
    public static Sought of(MultivaluedMap<String, String> query, String find, String page) {
        return new Sought(query.getFirst(find), Pages.number(query.getFirst(page)).map(n -> (int) Math.min(LAST, n)).orElse(1));
    }

    /** The address of a list, narrowed to what has a name. */
    public static String link(String list, String name) {
        return list + "?find=" + URLEncoder.encode(name, StandardCharsets.UTF_8);
    }

    /** For a query: {@code like} it, with {@code escape '!'}. */
    public String pattern() {
        return "%" + find.toLowerCase(Locale.ROOT).replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
    }

    /** How many lines stand before this page. */
    public int skipped() {
        return (page - 1) * LINES;
    }
}
