package benchful;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The rooms of the house, which are its packages, floor by floor from the top. A room looks only at lower floors. */
final class Rooms {
    /** Rooms on one floor do not know each other. */
    static final List<List<String>> FLOORS = List.of(
            List.of("home"),
            List.of("samples"),
            List.of("documents"),
            List.of("documents.checklist"),
            List.of("documents.labels", "documents.lists"),
            List.of("documents.handout"),
            List.of("documents.parts"),
            List.of("documents.paper", "documents.pdf"),
            List.of("findings", "orders"),
            List.of("assessments", "batches", "packing", "plans.pages", "reviews"),
            List.of("day", "plans.whatif"),
            List.of("plans.pictures", "plans.stored"),
            List.of("plans"),
            List.of("plans.materials"),
            List.of("plans.materials.kits"),
            List.of("plans.materials.cutting", "plans.materials.sizes"),
            List.of("classes"),
            List.of("stock.sources", "studio"),
            List.of("catalogue.suppliers", "projects.writing", "stock.lists"),
            List.of("projects", "stock"),
            List.of("hazards"),
            List.of("venues"),
            List.of("catalogue", "projects.lines", "projects.pictures"),
            List.of("backups", "bin", "privacy"),
            List.of("backups.tables"),
            List.of("start"),
            List.of("backups.archive", "database"),
            List.of("web.door"),
            List.of("web.sending"),
            List.of("web.forms", "web.tables", "web.tasks"),
            List.of("web", "web.forms.fields", "web.phones"),
            List.of("core.cutting.lengths", "core.cutting.sheets", "core.lesson.advice", "core.lesson.order.solver"),
            List.of("core.cutting.patterns", "core.lesson.order", "core.lesson.risk"),
            List.of("core.lesson.order.check"),
            List.of("core.lesson.order.model"),
            List.of("core.lesson.time"),
            List.of("core.buying", "core.cutting", "core.day", "core.formula", "core.learning", "core.lesson", "core.needs",
                    "core.sizing"),
            List.of("core.quantity"),
            List.of("core"));

    /** Of the rooms, for whoever reads. */
    static final Path PICTURE = Path.of("src/docs/rooms.md");

    private static final String HOUSE = "benchful";
    private static final Path SOURCES = Path.of("src/main/java/benchful");

    private Rooms() {}

    /** What each room looks at, with one line of code that does. */
    static Map<String, Map<String, String>> arrows(JavaClasses house) {
        Map<String, Map<String, String>> arrows = new TreeMap<>();
        for (JavaClass from : house) {
            Map<String, String> seen = arrows.computeIfAbsent(room(from), r -> new TreeMap<>());
            from.getDirectDependenciesFromSelf().stream()
                    .filter(d -> isOurs(d.getTargetClass()) && !room(d.getTargetClass()).equals(room(from)))
                    .forEach(d -> seen.putIfAbsent(room(d.getTargetClass()), d.getDescription()));
        }
        return arrows;
    }

    /** The arrows that lead to no lower floor, each with a line of code. */
    static List<String> upward(Map<String, Map<String, String>> arrows) {
        return arrows.entrySet().stream()
                .flatMap(room -> room.getValue().entrySet().stream()
                        .filter(seen -> floor(seen.getKey()) <= floor(room.getKey()))
                        .map(seen -> "%s -> %s: %s".formatted(room.getKey(), seen.getKey(), seen.getValue())))
                .toList();
    }

    /** Counted from the top; -1 for a room that has none. */
    private static int floor(String room) {
        return IntStream.range(0, FLOORS.size()).filter(i -> FLOORS.get(i).contains(room)).findFirst().orElse(-1);
    }

    /** The house looked at from so far that only so many parts of a package's name are told apart. */
    static SliceAssignment toDepth(int parts) {
        return new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
                return isOurs(javaClass) ? SliceIdentifier.of(start(room(javaClass))) : SliceIdentifier.ignore();
            }

            private String start(String room) {
                return Arrays.stream(room.split("\\.")).limit(parts).collect(Collectors.joining("."));
            }

            @Override
            public String getDescription() {
                return "rooms to a depth of " + parts;
            }
        };
    }

    /** Main source files of each room. */
    static Map<String, Long> files() {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(file -> file.toString().endsWith(".java"))
                    .collect(Collectors.groupingBy(Rooms::room, TreeMap::new, Collectors.counting()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As a page of Markdown. */
    static String drawn(Map<String, Map<String, String>> arrows) {
        String lines = FLOORS.stream().map(floor -> drawn(floor, arrows)).collect(Collectors.joining());
        return """
                # The rooms of the house

                Floor by floor from the top, each room with those it looks at: all on lower floors. Rooms on one floor do not know
                each other. `ArchitectureTest` holds this page against the code and tells how to renew it.

                | floor | room | looks at |
                | --- | --- | --- |
                """ + lines;
    }

    private static String drawn(List<String> floor, Map<String, Map<String, String>> arrows) {
        int number = FLOORS.size() - FLOORS.indexOf(floor);
        return new TreeSet<>(floor).stream()
                .map(room -> "| %d | %s | %s |\n".formatted(number, room, String.join(", ", arrows.get(room).keySet())))
                .collect(Collectors.joining());
    }

    private static boolean isOurs(JavaClass javaClass) {
        return javaClass.getPackageName().startsWith(HOUSE);
    }

    private static String room(Path file) {
        return SOURCES.relativize(file.getParent()).toString().replace(File.separatorChar, '.');
    }

    private static String room(JavaClass javaClass) {
        return javaClass.getPackageName().substring(HOUSE.length()).replaceFirst("^[.]", "");
    }
}
