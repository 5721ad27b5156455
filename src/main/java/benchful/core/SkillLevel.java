package benchful.core;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How practised a group or a student is. It scales students' times and calls for help, and the waste allowance. Against an improver
 * beginners take 1.5 times as long and ask 1.5 times as often, the experienced take 0.75 times as long and ask half as often (common
 * practice, no source; reviews of real classes put it right).
 */
public enum SkillLevel {
    BEGINNER(1.5, 1.5),
    IMPROVER(1, 1),
    EXPERIENCED(0.75, 0.5);

    private final double pace;
    private final double calls;

    SkillLevel(double pace, double calls) {
        this.pace = pace;
        this.calls = calls;
    }

    /** What the times of another level are multiplied by for this one. */
    public double paceAgainst(SkillLevel other) {
        return pace / other.pace;
    }

    /** What the calls an hour of another level are multiplied by for this one. */
    public double callsAgainst(SkillLevel other) {
        return calls / other.calls;
    }

    /** As written in sheets: beginner, improver, experienced. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(SkillLevel::word).toList();
    }
}
