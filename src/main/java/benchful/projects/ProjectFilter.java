package benchful.projects;

import benchful.web.Sought;
import io.quarkus.qute.TemplateData;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** What the list of projects is narrowed to. Blanks ask for nothing. */
@TemplateData
public record ProjectFilter(String words, String craft, String level) {
    public ProjectFilter {
        words = words == null ? "" : words.strip();
        craft = craft == null ? "" : craft;
        level = level == null ? "" : level;
    }

    public boolean isEmpty() {
        return words.isEmpty() && craft.isEmpty() && level.isEmpty();
    }

    /** Every word must stand in the name, the craft or the summary, each as a pattern for {@code like}. */
    List<String> patterns() {
        return Arrays.stream(words.split("\\s+")).map(word -> new Sought(word, 1).pattern()).toList();
    }

    /** What else an address carries to keep the filter. */
    public String sent() {
        return "&craft=%s&level=%s".formatted(URLEncoder.encode(craft, StandardCharsets.UTF_8), URLEncoder.encode(level, StandardCharsets.UTF_8));
    }
}
