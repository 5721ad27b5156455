package benchful.core;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How practised a group is. It scales students' times and the waste allowance. */
public enum SkillLevel {
    BEGINNER,
    IMPROVER,
    EXPERIENCED;

    /** As written in sheets: beginner, improver, experienced. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(SkillLevel::word).toList();
    }
}
