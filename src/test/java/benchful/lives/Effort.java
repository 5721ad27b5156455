package benchful.lives;

/** How many tries a search for faults makes: few in every build, many by {@code -Dbenchful.lives=long} or as many as it says. */
public final class Effort {
    private static final String ASKED = System.getProperty("benchful.lives", "short");

    private Effort() {}

    public static int of(int few, int many) {
        return ASKED.equals("long") ? many : ASKED.matches("\\d{1,6}") ? Integer.parseInt(ASKED) : few;
    }
}
