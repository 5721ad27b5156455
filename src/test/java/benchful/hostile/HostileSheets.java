package benchful.hostile;

import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Place;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Files of projects and classes in YAML and JSON that no exporting program writes. */
final class HostileSheets {
    private static final int MB = 1 << 20;

    private final Place place;
    private final String kind;
    private final String good;

    /** @param good a file as the program exports it */
    HostileSheets(Place place, byte[] good) {
        this.place = place;
        this.kind = place == Place.PROJECT ? "project" : "class";
        this.good = new String(good, StandardCharsets.UTF_8);
    }

    Stream<File> all() {
        return Stream.of(nested(), typed(), written()).flatMap(s -> s);
    }

    /** The project with each photograph as its picture. */
    Stream<File> with(Stream<File> photographs) {
        return photographs.map(p -> sheet(p.name() + ", in a project's file", p.refused(), good.replaceFirst("(?ms)^pictures:.*?(?=^\\w|\\z)", "")
                + "\npictures:\n- name: \"odd-one\"\n  media_type: \"image/png\"\n  alt: \"an odd one\"\n  content: \"" + Base64.getEncoder().encodeToString(p.content()) + "\"\n"));
    }

    private Stream<File> nested() {
        return Stream.of(
                sheet("lists within lists", true, good + "\nx: " + "[".repeat(50_000)),
                sheet("braces within braces", true, "{\"a\":".repeat(50_000)),
                sheet("lines within lines", true, IntStream.range(0, 3_000).mapToObj(i -> " ".repeat(i) + "a:\n").collect(Collectors.joining())),
                sheet("questions within questions", true, "? ".repeat(50_000)),
                sheet("dashes within dashes", true, "- ".repeat(50_000)),
                sheet("a laugh told a billion times", true, laughs() + good),
                sheet("a laugh that is nothing but a laugh", true, laughs() + "name: *l9\n"),
                sheet("a place within itself", true, "name: &a [*a]\n"),
                sheet("keys taken from elsewhere", true, "x: &x {name: a}\n<<: *x\n"),
                sheet("a key that is a list", true, good + "\n? [a, b]\n: c\n"),
                sheet("anchors without end", true, IntStream.range(0, 50_000).mapToObj(i -> "k%d: &a%d x\n".formatted(i, i)).collect(Collectors.joining())),
                sheet("steps without end", true, good.replaceFirst("(?m)^( *)steps:", "$1steps:" + IntStream.range(0, 30_000).mapToObj(i -> "\n$1- id: s" + i).collect(Collectors.joining()) + "\n$1others:")));
    }

    private Stream<File> typed() {
        return Stream.of(
                sheet("a tag of a class", true, "!!java.net.URLClassLoader [[!!java.net.URL [\"http://elsewhere.example/\"]]]\n"),
                sheet("a tag on the name", false, first("name:", "!!javax.script.ScriptEngineManager \"x\"")),
                sheet("a tag of bytes", false, first("name:", "!!binary \"AAAA\"")),
                sheet("a tag of bytes that are none", true, first("name:", "!!binary \"?\"")),
                sheet("a tag of a day", false, first("name:", "!!timestamp 2027-99-99")),
                sheet("a tag without a name", false, first("name:", "! x")),
                sheet("keys twice", true, good + "\n" + good),
                sheet("a number without end", true, first("name:", "1".repeat(MB))),
                sheet("a number with an exponent without end", true, first("headcount:", "1e999999999")),
                sheet("a number that is none", true, first("headcount:", ".nan")),
                sheet("a number of sixty", false, first("name:", "190:20:30")),
                sheet("a step that lasts for ever", true, first("lasts:", "99999999999999999999999 h")),
                sheet("a step that lasts less than nothing", true, first("lasts:", "-1 h")),
                sheet("nothing where a text is meant", true, first("name:", "~")),
                sheet("a list where a text is meant", true, first("name:", "[a, b]")),
                sheet("a name of ten megabytes", true, first("name:", "x".repeat(10 * MB))),
                sheet("a name of a megabyte between marks", true, first("name:", "\"" + "x".repeat(MB) + "\"")),
                sheet("an amount that is worked out for ever", true, first("amount:", "\"" + "(".repeat(20_000) + "1" + ")".repeat(20_000) + "\"")),
                sheet("an amount of powers of powers", true, first("amount:", "\"9^9^9^9^9 * 1 m\"")),
                sheet("a picture of another machine", true, good + "\npictures: [{name: a, media_type: image/png, alt: a, content: \"http://elsewhere.example/a.png\"}]\n"));
    }

    private Stream<File> written() {
        return Stream.of(
                sheet("nothing", true, ""),
                sheet("blanks", true, " \n\n \n"),
                sheet("three dashes", true, "---\n---\n---\n"),
                sheet("two sheets", true, good + "\n---\n" + good),
                sheet("another kind", true, good.replaceFirst("benchful: .*", "benchful: venue/1")),
                sheet("a kind of the future", true, good.replaceFirst("benchful: .*", "benchful: " + kind + "/99")),
                sheet("NUL", true, good + "\0"),
                sheet("a tab at the beginning of a line", true, good + "\nx:\n\t- a\n"),
                sheet("a mark of another order", false, "\uFEFF" + good),
                sheet("a rule of the file", true, "%YAML 9.9\n---\n" + good),
                sheet("a rule that names tags", false, "%TAG !e! tag:elsewhere.example,2000:\n---\n" + good),
                sheet("marks of pages", false, first("name:", "\"<script>alert(1)</script>{#if}{x} &amp; '\"")),
                sheet("signs that can't be stored", true, first("name:", "\"a\\0b\"")),
                sheet("half a pair", true, first("name:", "\"a\\uD800b\"")),
                sheet("a text that is not closed", true, first("name:", "\"a")),
                sheet("JSON that is not closed", true, "{\"benchful\": \"" + kind + "/1\", \"name\": \"a"),
                sheet("JSON with something behind it", true, "{\"benchful\": \"" + kind + "/1\"} x"),
                sheet("a page", true, "<!DOCTYPE html><html><body>404</body></html>"),
                file("UTF-16", true, good.getBytes(StandardCharsets.UTF_16)),
                file("half a letter", true, Damage.joined(good.getBytes(StandardCharsets.UTF_8), new byte[] {(byte) 0xE2, (byte) 0x80})),
                file("an archive", true, new Zipped().with("a.yaml", good).bytes()));
    }

    /** With another value behind the first such key, where the file has one. */
    private String first(String key, String value) {
        return good.replaceFirst("(?m)(?<=[ \\-]|^)" + key + " .*$", key + " " + value.replace("\\", "\\\\"));
    }

    private static String laughs() {
        return "l0: &l0 [ha, ha]\n" + IntStream.rangeClosed(1, 9)
                .mapToObj(i -> "l%d: &l%d [%s]\n".formatted(i, i, String.join(", ", java.util.Collections.nCopies(10, "*l" + (i - 1))))).collect(Collectors.joining());
    }

    private File sheet(String name, boolean refused, String text) {
        return file(name, refused && !text.equals(good), text.getBytes(StandardCharsets.UTF_8));
    }

    private File file(String name, boolean refused, byte[] content) {
        return new File(kind + ": " + name, place, content, refused);
    }
}
