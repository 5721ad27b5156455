package benchful.web;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Blanks in a tutor's text, such as "Pour in &lt;resin part a&gt;": what stands between the brackets names an amount or a measure, and is filled in
 * for whoever reads. A blank begins with a letter right after the bracket and holds no sign of tags or addresses, so "a &lt; b", "&lt;3",
 * "&lt;br/&gt;" and "&lt;https://...&gt;" are text as ever, and so is every blank whose name is not known.
 */
public final class Blanks {
    private static final Pattern BLANK = Pattern.compile("<(\\p{L}[^<>\\n:@=\"\\\\]{0,119}+)(?<![/\\s])>");
    /** As drawings hold them: the brackets of a text stand for themselves there. */
    private static final Pattern DRAWN = Pattern.compile("&lt;(\\p{L}[^<>&\\n:@=\"\\\\]{0,119}+)(?:&gt;|>)");

    private Blanks() {}

    /** What a text names, in its order; what it closes again, as in "&lt;b&gt;bold&lt;/b&gt;", is text. */
    public static List<String> names(String text) {
        return text == null ? List.of() : BLANK.matcher(text).results().map(found -> found.group(1)).filter(name -> !text.contains("</" + name + ">")).distinct().toList();
    }

    /** @param value what a name stands for; of nothing the blank is left as it was typed */
    public static String filled(String text, Function<String, Optional<String>> value) {
        return text == null ? null : BLANK.matcher(text).replaceAll(found -> filled(found, value, UnaryOperator.identity()));
    }

    /** The same in the texts of a drawing. */
    public static String drawn(String svg, Function<String, Optional<String>> value) {
        return DRAWN.matcher(svg).replaceAll(found -> filled(found, value, words -> words.replace("&", "&amp;").replace("<", "&lt;")));
    }

    /** The same text where what a blank names is called otherwise. */
    public static String renamed(String text, String from, String to) {
        return text == null ? null : BLANK.matcher(text).replaceAll(found -> Matcher.quoteReplacement(found.group(1).equalsIgnoreCase(from) ? "<" + to + ">" : found.group()));
    }

    private static String filled(MatchResult found, Function<String, Optional<String>> value, UnaryOperator<String> written) {
        return Matcher.quoteReplacement(value.apply(found.group(1)).map(words -> written.apply(whole(words))).orElse(found.group()));
    }

    /** A number is not parted from its unit. */
    private static String whole(String words) {
        return words.replace(' ', '\u00a0');
    }
}
