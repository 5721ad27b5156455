package benchful.projects.lines;

/**
 * What was understood of some words of a line.
 *
 * @param key of the row that it became; empty for the row as a whole
 * @param label of that place, in words
 * @param words of the line that it was read from
 * @param doubt the sentence that says what was taken for granted and how to say it otherwise; null where nothing was
 */
public record Part(String key, String label, String words, String doubt) {
    static Part of(String key, String label, String words) {
        return new Part(key, label, words, null);
    }
}
