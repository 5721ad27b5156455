package benchful.projects;

import io.quarkus.qute.TemplateData;
import java.util.Arrays;
import java.util.Locale;

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

    /** Every word must stand in the name, the craft or the summary. */
    boolean takes(ProjectSheet sheet) {
        String text = "%s %s %s".formatted(sheet.name(), sheet.craft(), sheet.summary()).toLowerCase(Locale.ROOT);
        boolean found = Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(text::contains);
        return found && (craft.isEmpty() || craft.equals(sheet.craft())) && (level.isEmpty() || level.equalsIgnoreCase(sheet.level().name()));
    }
}
