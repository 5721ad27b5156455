package benchful.bin;

/**
 * What somebody removes, as the bin calls it.
 *
 * @param kind in a word: "class", "venue"
 * @param name as its page calls it
 * @param address of its page
 */
public record Thing(String kind, String name, String address) {}
