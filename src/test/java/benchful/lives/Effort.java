package benchful.lives;

import java.time.Duration;

/** How many tries a search for faults makes: few in every build, many by {@code -Dbenchful.lives=long} or as many as it says. */
public final class Effort {
    private static final String ASKED = System.getProperty("benchful.lives", "short");

    private Effort() {}

    public static int of(int few, int many) {
        return ASKED.equals("long") ? many : ASKED.matches("\\d{1,6}") ? Integer.parseInt(ASKED) : few;
    }

    /** An answer may take: ten seconds, or {@code -Dbenchful.lives.seconds} on a machine that has other work as well. */
    static Duration longest() {
        return Duration.ofSeconds(Long.getLong("benchful.lives.seconds", 10));
    }
}
