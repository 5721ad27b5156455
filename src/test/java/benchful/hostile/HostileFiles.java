package benchful.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Hostile files by name, each made anew in memory, the same for the same seed. */
public final class HostileFiles {
    private static final String OPEN = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 90 90\">";
    private static final int MANY = 400;

    private HostileFiles() {}

    /** Where a file is sent to. */
    public enum Place { PICTURE, LIST, PROJECT, CLASS, BACKUP }

    /** @param refused whether it must be refused; otherwise it may be taken, with what is hostile left out */
    public record File(String name, Place place, byte[] content, boolean refused) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** Files as the program itself writes them, of which hostile ones are made. */
    record Good(byte[] project, byte[] craftClass, byte[] backup) {}

    /** {@code count} files for every place that takes any, those that were thought of, then damaged ones, in no order but that backups come last. */
    static List<File> all(Good good, int count) {
        HostileSheets projects = new HostileSheets(Place.PROJECT, good.project());
        List<File> files = Stream.of(drawings(), HostileWorkbooks.all(), HostileTables.all(), HostilePhotos.all(), projects.with(HostilePhotos.all()), projects.all(),
                        new HostileSheets(Place.CLASS, good.craftClass()).all(), new HostileArchives(good.backup()).all()).flatMap(s -> s)
                .collect(Collectors.toCollection(ArrayList::new));
        damaged(good).limit(Math.max(0, count - files.size())).forEach(files::add);
        Collections.shuffle(files, new Random(1));
        return files.subList(0, Math.min(count, files.size())).stream().sorted(Comparator.comparing(f -> f.place() == Place.BACKUP)).toList();
    }

    private static Stream<File> damaged(Good good) {
        List<File> whole = List.of(new File("workbook", Place.LIST, HostileWorkbooks.good(), false), new File("table", Place.LIST, HostileTables.good(), false),
                new File("png", Place.PICTURE, HostilePhotos.good("png"), false), new File("jpeg", Place.PICTURE, HostilePhotos.good("jpeg"), false),
                new File("project", Place.PROJECT, good.project(), false), new File("class", Place.CLASS, good.craftClass(), false), new File("backup", Place.BACKUP, good.backup(), false));
        return IntStream.iterate(0, i -> i + 1).mapToObj(i -> {
            File file = whole.get(i % whole.size());
            return new File("damaged %s %d".formatted(file.name(), i), file.place(), Damage.of(file.content(), i), false);
        });
    }

    /** Drawings that ask for far more than they are long. */
    public static Stream<File> drawings() {
        return Stream.of(
                drawing("use of use", true, nested("use xlink:href=\"#%s\"", "g", "<rect width=\"1\" height=\"1\"/>")),
                drawing("use of use, plain reference", true, nested("use href=\"#%s\"", "symbol", "<rect width=\"1\" height=\"1\"/>")),
                drawing("pattern of pattern", true, nested("rect width=\"9\" height=\"9\" fill=\"url(#%s)\"", "pattern", "<rect width=\"1\" height=\"1\"/>")),
                drawing("mask of mask", true, nested("rect width=\"9\" height=\"9\" mask=\"url('#%s')\"", "mask", "<rect width=\"1\" height=\"1\"/>")),
                drawing("clip of clip", true, nested("rect width=\"9\" height=\"9\" style=\"clip-path:url( #%s )\"", "clipPath", "<rect width=\"1\" height=\"1\"/>")),
                drawing("itself by use", true, "<g id=\"a\"><use href=\"#a\"/></g>"),
                drawing("each other by use", true, "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><use href=\"#a\"/></g>"),
                drawing("itself by pattern", true, "<pattern id=\"a\" width=\"1\" height=\"1\"><rect fill=\"url(#a)\" width=\"2\" height=\"2\"/></pattern>"),
                drawing("itself by style sheet", false, "<style>rect{fill:url(#a)}</style><pattern id=\"a\" width=\"1\" height=\"1\"><rect width=\"2\" height=\"2\"/></pattern>"),
                drawing("a long chain of use", true, IntStream.range(0, MANY).mapToObj(i -> "<g id=\"c%d\"><use href=\"#c%d\"/></g>".formatted(i, i + 1)).reduce("", String::concat)),
                drawing("a long chain of use, its end first", true, IntStream.range(0, MANY).mapToObj(i -> "<g id=\"c%d\"><use href=\"#c%d\"/></g>".formatted(i + 1, i)).reduce("", String::concat)),
                drawing("tiny dash", true, "<path d=\"M0 0 L90 90\" stroke=\"#000\" stroke-dasharray=\"0.00001\"/>"),
                drawing("tiny dash in a style", true, "<rect width=\"90\" height=\"90\" stroke=\"#000\" style=\"stroke-dasharray: 1e-7, 1e-7\"/>"),
                drawing("tiny dash in a sheet", true, "<style>circle{stroke:#000;stroke-dasharray:.00001}</style><circle r=\"50\"/>"),
                drawing("fine dash, far line", true, "<path d=\"M0 0 L9999999 0\" stroke=\"#000\" stroke-dasharray=\"1\"/>"),
                drawing("huge numbers", true, "<path d=\"M0 0 L1e30 1e30\" stroke=\"#000\"/>"),
                drawing("huge scale", true, "<g transform=\"scale(1e300)\"><rect width=\"1\" height=\"1\"/></g>"),
                drawing("huge letters", true, "<text font-size=\"1e9\" y=\"9\">a</text>"),
                drawing("markers at each corner", true, "<marker id=\"m\">" + "<path d=\"M0 0 L1 1\"/>".repeat(MANY) + "</marker><path marker-mid=\"url(#m)\" d=\"M0 0" + " L1 1".repeat(MANY) + "\"/>"),
                drawing("a rule of many names", true, "<style>" + "g ".repeat(30) + "rect{fill:red}</style>" + "<g>".repeat(90) + "<rect/>" + "</g>".repeat(90)),
                drawing("rules without end", true, "<style>" + "a{fill:red}".repeat(30_000) + "</style>" + "<rect/>".repeat(2_000)),
                drawing("shapes without end", true, "<rect/>".repeat(60_000)),
                drawing("filters", false, "<filter id=\"f\"><feMorphology radius=\"1e6\"/><feTurbulence numOctaves=\"1000000\"/></filter><rect width=\"9\" height=\"9\" filter=\"url(#f)\"/>"),
                drawing("blanks after a letter's size", false, "<text font-size=\"" + " ".repeat(200_000) + "\">a</text>"),
                drawing("blanks after url", true, "<rect fill=\"url(" + " ".repeat(200_000) + "x\"/>"),
                drawing("blanks in the frame", false, "<svg viewBox=\"0 0" + " ".repeat(200_000) + "9 9\"/>"),
                drawing("url again and again", false, "<rect fill=\"" + "url(#a) ".repeat(20_000) + "\"/>"),
                drawing("a frame of nothing", true, "<svg viewBox=\"0 0 1e-9 1e-9\"/>"));
    }

    /** {@code count} drawings of random parts that use each other in any way. */
    public static Stream<File> anyDrawings(int count) {
        return IntStream.range(0, count).mapToObj(seed -> drawing("drawing " + seed, false, any(new SplittableRandom(seed))));
    }

    private static String any(SplittableRandom random) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < random.nextInt(1, 12); i++) {
            String id = "p" + random.nextInt(8);
            String number = List.of("0", "1", "-3.5", "1e-9", "1e6", "1e40", "NaN", "9,9", "").get(random.nextInt(9));
            parts.add(List.of("<g id=\"%s\"><use href=\"#%s\"/><use href=\"#%3$s\"/></g>", "<pattern id=\"%s\" width=\"%4$s\" height=\"1\"><rect width=\"%4$s\" height=\"9\" fill=\"url(#%s)\"/></pattern>",
                    "<mask id=\"%s\"><circle r=\"%4$s\" mask=\"url(#%s)\"/></mask>", "<path id=\"%s\" d=\"M0 0 L%4$s 9\" stroke=\"#000\" stroke-dasharray=\"%4$s\" marker-end=\"url(#%2$s)\"/>",
                    "<marker id=\"%s\" markerWidth=\"%4$s\"><use href=\"#%s\"/></marker>", "<text id=\"%s\" font-size=\"%4$s\" fill=\"url(#%2$s)\">%4$s</text>",
                    "<linearGradient id=\"%s\" x2=\"%4$s\" href=\"#%s\"><stop offset=\"%4$s\"/></linearGradient>", "<clipPath id=\"%s\"><rect width=\"%4$s\" height=\"2\" clip-path=\"url(#%s)\"/></clipPath>")
                    .get(random.nextInt(8)).formatted(id, "p" + random.nextInt(8), "p" + random.nextInt(8), number));
        }
        return String.join("", parts) + "<rect width=\"50\" height=\"50\" fill=\"url(#p1)\" mask=\"url(#p2)\" clip-path=\"url(#p3)\"/><use href=\"#p4\"/>";
    }

    /** Eight parts of ten, each of which uses the one before: a hundred million shapes. */
    private static String nested(String use, String holder, String first) {
        StringBuilder parts = new StringBuilder("<%s id=\"n0\" width=\"1\" height=\"1\">%s</%s>".formatted(holder, first, holder));
        for (int level = 1; level <= 8; level++) {
            parts.append("<%s id=\"n%d\" width=\"1\" height=\"1\">".formatted(holder, level));
            parts.append(("<" + use.formatted("n" + (level - 1)) + "/>").repeat(10)).append("</%s>".formatted(holder));
        }
        return parts + "<" + use.formatted("n8") + "/>";
    }

    private static File drawing(String name, boolean refused, String inside) {
        return new File(name, Place.PICTURE, (OPEN + inside + "</svg>").getBytes(StandardCharsets.UTF_8), refused);
    }
}
