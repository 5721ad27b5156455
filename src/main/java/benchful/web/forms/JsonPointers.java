package benchful.web.forms;

/** JSON Pointers (RFC 6901): the places of a sheet, as fields are named and faults are found. */
public final class JsonPointers {
    private JsonPointers() {}

    /** The place of a key in the map at {@code pointer}. */
    public static String below(String pointer, String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    static String unescaped(String key) {
        return key.replace("~1", "/").replace("~0", "~");
    }

    /** A place in words: {@code /steps/3/student/quick} is "steps 4, student, quick". */
    public static String words(String pointer) {
        StringBuilder words = new StringBuilder();
        for (String key : pointer.substring(Math.min(1, pointer.length())).split("/")) {
            boolean number = key.matches("\\d{1,6}");
            words.append(words.isEmpty() ? "" : number ? " " : ", ")
                    .append(number ? String.valueOf(Integer.parseInt(key) + 1) : unescaped(key).replace('_', ' '));
        }
        return words.toString();
    }
}
