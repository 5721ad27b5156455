package benchful.projects.writing;

import benchful.core.Fault;
import benchful.projects.ProjectSpec;
import benchful.web.forms.SpecReader;
import benchful.web.forms.SpecReader.Faulty;
import benchful.web.forms.SpecReader.Read;
import benchful.web.forms.SpecReader.Reading;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What of an unfinished project can be printed: all that has no fault. A material, tool or picture that is not whole is left out, and
 * so is what is wrong about a step; but a step needs a title and a time, for nobody could follow it.
 *
 * @param sheet null where it can't be printed yet
 * @param leftOut what is left out, in words
 */
record Printable(ProjectSpec sheet, List<String> leftOut) {
    private static final Pattern ROW = Pattern.compile("(/(?:materials|tools|pictures|measures|sizing|sizes)/\\d+|/hazards/\\d+)(?:/.*)?");
    private static final Pattern ASIDE = Pattern.compile("(/steps/\\d+/(?!title|kind|lasts|student|id)[^/]+(?:/\\d+)?)(?:/.*)?");
    private static final Pattern STEP = Pattern.compile("(/steps/\\d+)(?:/.*)?");
    private static final Pattern FIELD = Pattern.compile("/(?:minimum_age|summary|care|source|times_of)");
    private static final int ROUNDS = 6;

    Printable {
        leftOut = List.copyOf(leftOut);
    }

    static Printable of(ObjectNode written, SpecReader<ProjectSpec> reader) {
        return of(written, reader, false);
    }

    /** To be looked at while somebody types: steps that are not whole are left out too. */
    static Printable asFarAsItGoes(ObjectNode written, SpecReader<ProjectSpec> reader) {
        return of(written, reader, true);
    }

    private static Printable of(ObjectNode written, SpecReader<ProjectSpec> reader, boolean withoutSteps) {
        ObjectNode tree = written.deepCopy();
        named(tree);
        List<String> leftOut = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            Reading<ProjectSpec> reading = reader.tree(tree);
            if (reading instanceof Read<ProjectSpec> read) {
                return new Printable(read.sheet(), leftOut);
            }
            List<String> faulty = removable(((Faulty<ProjectSpec>) reading).faults(), withoutSteps);
            if (faulty.isEmpty()) {
                break;
            }
            faulty.forEach(pointer -> leftOut.add(remove(tree, pointer)));
        }
        return new Printable(null, List.of());
    }

    /** What a print-out can do without until somebody says it. */
    private static void named(ObjectNode tree) {
        if (tree.path("name").asText().isBlank()) {
            tree.put("name", "A piece without a name");
        }
        if (tree.path("craft").asText().isBlank()) {
            tree.put("craft", "craft");
        }
        if (tree.path("level").asText().isBlank()) {
            tree.put("level", "beginner");
        }
        if (tree.path("sizes").isEmpty()) {
            tree.putArray("sizes").addObject().put("name", "One size");
        }
    }

    /** Places that may go, later rows of a list first; nothing where something must stay. */
    private static List<String> removable(List<Fault> faults, boolean withoutSteps) {
        List<String> places = new ArrayList<>();
        for (Fault fault : faults) {
            Matcher row = ROW.matcher(fault.pointer());
            Matcher aside = ASIDE.matcher(fault.pointer());
            Matcher step = STEP.matcher(fault.pointer());
            if (row.matches()) {
                places.add(row.group(1));
            } else if (aside.matches()) {
                places.add(aside.group(1));
            } else if (FIELD.matcher(fault.pointer()).matches()) {
                places.add(fault.pointer());
            } else if (withoutSteps && step.matches()) {
                places.add(step.group(1));
            } else {
                return List.of();
            }
        }
        return places.stream().distinct().sorted(Comparator.comparing(Printable::rank).reversed()).collect(Collectors.toList());
    }

    /** So that numbers are compared as such. */
    private static String rank(String pointer) {
        return Pattern.compile("\\d+").matcher(pointer).replaceAll(m -> "%06d".formatted(Integer.parseInt(m.group())));
    }

    private static String remove(ObjectNode tree, String pointer) {
        int slash = pointer.lastIndexOf('/');
        JsonNode parent = tree.at(pointer.substring(0, slash));
        String key = pointer.substring(slash + 1);
        JsonNode there = tree.at(pointer);
        String called = there.path("material").asText(there.path("title").asText(there.path("name").asText(there.asText(key.replace('_', ' ')))));
        if (parent instanceof ArrayNode list && key.matches("\\d+")) {
            list.remove(Integer.parseInt(key));
        } else if (parent instanceof ObjectNode object) {
            object.remove(key);
        }
        return called.isBlank() ? key : called;
    }
}
