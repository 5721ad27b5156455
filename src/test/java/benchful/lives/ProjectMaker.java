package benchful.lives;

import benchful.core.quantity.Dimension;
import benchful.projects.SizingKind;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes projects of every kind that their schema and rules allow; names that must agree do. */
final class ProjectMaker {
    private static final List<Dimension> COUNTED =
            List.of(Dimension.COUNT, Dimension.LENGTH, Dimension.AREA, Dimension.VOLUME, Dimension.MASS);
    private static final String DRAWING = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\"><path d=\"M0 10H40\" stroke=\"#333\"/></svg>";

    private final Chance chance;
    private final ObjectNode project = SpecFormat.json().createObjectNode();
    private final Map<String, Dimension> measures = new LinkedHashMap<>();
    private final Map<String, Dimension> materials = new LinkedHashMap<>();
    private final List<String> cutToLength = new ArrayList<>();
    private final List<String> tools = new ArrayList<>();

    ProjectMaker(Chance chance) {
        this.chance = chance;
    }

    /** @param name told apart from every other project's */
    ObjectNode made(String name) {
        project.put("name", name).put("craft", chance.words(60)).put("level", chance.of("beginner", "improver", "experienced"));
        texts();
        measures();
        sizes();
        workings();
        materials();
        taken();
        toolsOfTheProject();
        pictures();
        steps();
        hazards(project);
        return project;
    }

    /** The kind of amount that each material is taken in, by its name. */
    Map<String, Dimension> materialsUsed() {
        return materials;
    }

    private void texts() {
        if (chance.once(2)) {
            project.put("summary", chance.words(10_000)).put("care", chance.words(10_000)).put("source", chance.words(300));
        }
        if (chance.once(3)) {
            project.put("benchful", "project/1").put("minimum_age", chance.edge(3, 18, 99));
        }
        if (chance.once(3)) {
            project.put("times_of", chance.of("beginner", "improver", "experienced"));
        }
        paces(project, new Chance(project.path("name").asText().hashCode()));
    }

    /** By a chance of its own, so that what else is made of a seed stays as it was. */
    private static void paces(ObjectNode project, Chance chance) {
        if (chance.once(3)) {
            ObjectNode paces = project.putObject("paces");
            List.of("beginner", "improver", "experienced").stream().filter(level -> !level.equals(project.path("times_of").asText("improver")))
                    .forEach(level -> paces.put(level, new BigDecimal(chance.of("0.5", "0.85", "1.7", "5"))));
        }
    }

    private void measures() {
        ArrayNode list = project.putArray("measures");
        measure(list, "length", Dimension.LENGTH);
        if (chance.once(3)) {
            measure(list, "turns_wanted", Dimension.COUNT);
        }
        if (chance.once(4)) {
            measure(list, "filling", Dimension.VOLUME);
        }
    }

    private void measure(ArrayNode list, String name, Dimension dimension) {
        measures.put(name, dimension);
        list.addObject().put("name", name).put("label", chance.words(80)).put("unit", chance.unit(dimension).symbol());
    }

    private void sizes() {
        ArrayNode list = project.putArray("sizes");
        chance.few(1, 3, 30, i -> i).forEach(i -> {
            ObjectNode size = list.addObject().put("name", chance.of("S/", "~1 ", "Größe ", "<i>", "40 \"") + i);
            ObjectNode values = size.putObject("measures");
            measures.forEach((name, dimension) -> values.put(name, name.equals("length")
                    ? chance.of("42 cm", "16.5 in", "1 ft", "190 mm", "0.5 yd", "0,333333 m") : chance.amount(dimension)));
        });
    }

    private void workings() {
        ArrayNode list = project.putArray("sizing");
        chance.few(0, 1, 4, i -> i).forEach(i -> {
            SizingKind kind = chance.of(SizingKind.values());
            ObjectNode working = list.addObject().put("name", "work" + i).put("kind", kind.name().toLowerCase(java.util.Locale.ROOT));
            ObjectNode values = working.putObject("values");
            kind.required().forEach(v -> values.put(v, value(v)));
            kind.optional().stream().filter(v -> chance.once(4)).forEach(v -> values.put(v, value(v)));
            if (kind.strings()) {
                ArrayNode beads = working.putArray("beads");
                chance.few(1, 3, 40, b -> b).forEach(b -> bead(beads.addObject(), b));
            }
        });
    }

    private void bead(ObjectNode bead, int number) {
        bead.put("bead", "bead " + number).put("size", chance.of("6 mm", "8 mm", "0.25 in", "length / 50"));
        if (chance.once(2)) {
            bead.put("count", chance.between(1, 5));
        }
    }

    private String value(String name) {
        Dimension dimension = SizingKind.dimension(name);
        if (name.equals("target") || name.equals("wrist")) {
            return "length";
        }
        if (dimension.equals(Dimension.LENGTH)) {
            return chance.of("1 mm", "2 mm", "0.04 in", "length / 100");
        }
        if (dimension.equals(Dimension.COUNT)) {
            return chance.of("1", "2", "1 + 1");
        }
        return dimension.equals(Dimension.VOLUME) ? chance.of("12 ml", "1 floz", "1 ml / 3") : "1.1 g_per_cm3";
    }

    private void materials() {
        ArrayNode list = project.putArray("materials");
        chance.few(0, 4, 12, i -> "material %d %s".formatted(i, chance.of("", "=sum", "“fine”", "é"))).forEach(name -> {
            Dimension dimension = chance.of(COUNTED);
            materials.put(name.strip(), dimension);
            if (chance.once(8)) {
                line(list.addObject().put("material", name.strip()), dimension);
            }
            line(list.addObject().put("material", name.strip()), chance.once(40) ? chance.of(COUNTED) : dimension);
        });
        materials.keySet().stream().filter(name -> name.hashCode() % 5 == 0).forEach(name -> {
            List<ObjectNode> lines = new ArrayList<>();
            list.forEach(line -> lines.add((ObjectNode) line));
            lines.removeIf(line -> !line.get("material").asText().strip().equals(name));
            if (lines.stream().noneMatch(line -> line.has("pieces") || line.has("waste"))) {
                lines.forEach(line -> line.put("lent", true));
            }
        });
    }

    /** Some sizes take another of a material, or none; told by their names, so that nothing else is made otherwise. */
    private void taken() {
        List<String> names = List.copyOf(materials.keySet());
        project.withArray("sizes").forEach(size -> {
            int lot = Math.abs((project.get("name").asText() + size.get("name").asText()).hashCode() % 60);
            if (!names.isEmpty() && lot % 6 == 0) {
                String name = names.get(lot % names.size());
                ObjectNode taken = ((ObjectNode) size).putArray("takes").addObject().put("of", name);
                if (lot % 12 == 0) {
                    taken.put("use", name + ", large");
                }
            }
        });
    }

    private void line(ObjectNode line, Dimension dimension) {
        if (dimension.equals(Dimension.LENGTH)) {
            line.put("amount", chance.of("length", "2 * length + 40 cm", "length / 3", "1 ft", "sqrt(2) * 10 cm"));
            if (chance.mostly()) {
                cutToLength.add(line.get("material").asText());
                line.put("pieces", chance.of("1", "2", "3", "7", "24"));
            }
        } else if (dimension.equals(Dimension.AREA)) {
            line.put("amount", "12 cm").put("width", chance.of("30 mm", "1 in", "length / 10")).put("pieces", chance.of("1", "2", "5")).put("grain", chance.once(2));
        } else {
            line.put("amount", dimension.equals(Dimension.COUNT) ? chance.of("1", "12", "1/3", "25 %") : chance.of("1", "10/3", "0.5") + " * 1 " + chance.unit(dimension).symbol());
        }
        aside(line);
    }

    private void aside(ObjectNode line) {
        if (chance.once(4)) {
            line.put("waste", chance.of(0, 5.5, 33.3, 95).doubleValue());
        }
        if (chance.once(6)) {
            line.put("shared", true);
            if (chance.once(2)) {
                line.put("serves", chance.of(2, 6, 200).intValue());
            }
        } else if (chance.once(6)) {
            line.put("in_kit", false);
        }
        if (chance.once(5)) {
            line.put("choice", chance.words(300));
            if (chance.once(2)) {
                line.putArray("alternatives").add("stands in for " + line.get("material").asText());
                materials.put("stands in for " + line.get("material").asText(), materials.get(line.get("material").asText()));
            }
        }
        if (chance.once(3)) {
            line.put("note", chance.words(300));
        }
    }

    private void toolsOfTheProject() {
        ArrayNode list = project.putArray("tools");
        chance.few(0, 3, 20, i -> "tool " + i + chance.of("", " /~", " “a”")).forEach(name -> {
            tools.add(name);
            ObjectNode tool = list.addObject().put("name", name);
            if (chance.once(3)) {
                tool.put("personal", chance.once(2)).put("note", chance.words(300));
                hazards(tool);
            }
            if (chance.once(6)) {
                tool.put("owned", chance.edge(0, 6, 1000));
            }
        });
    }

    private void pictures() {
        if (chance.once(3)) {
            project.putArray("pictures").addObject().put("name", "cover").put("media_type", "image/svg+xml").put("alt", chance.words(300))
                    .put("content", Base64.getEncoder().encodeToString(DRAWING.getBytes(StandardCharsets.UTF_8)));
        }
    }

    private void steps() {
        ArrayNode list = project.putArray("steps");
        chance.few(1, 8, 40, i -> i).forEach(i -> step(list.addObject().put("id", "step_" + i).put("title", chance.words(120)), i));
    }

    private void step(ObjectNode step, int number) {
        String kind = chance.of("show", "make", "make", "wait", "together", "ahead", "between", "homework", "collect");
        step.put("kind", kind);
        if (kind.equals("make")) {
            make(step);
        } else if (!kind.equals("collect")) {
            step.put("lasts", kind.equals("wait") ? chance.of("0 min", "15 min", "1 h", "24 h", "30 d") : chance.time());
        }
        if (kind.equals("wait")) {
            leftToDry(step);
        }
        follows(step, number, kind);
        words(step);
        uses(step);
        grows(step, kind);
        hazards(step);
    }

    /** With the number of students, or by itself. */
    private void grows(ObjectNode step, String kind) {
        if (List.of("show", "together", "ahead", "between").contains(kind) && chance.once(4)) {
            step.put("per_student", chance.of("30 s", "1 min", "2 min"));
        }
        if (List.of("show", "together").contains(kind) && chance.once(4)) {
            step.put("may_run_over", chance.of("30 s", "5 min", "1 h"));
        }
        int watchers = Math.abs(step.path("title").asText().hashCode() % 8);
        if (kind.equals("show") && watchers > 2) {
            step.put("watchers", watchers == 7 ? 200 : watchers - 2);
        }
        if (kind.equals("wait") && step.has("tools") && chance.once(2)) {
            step.put("places", chance.edge(1, 6, 1000));
        }
    }

    private void make(ObjectNode step) {
        if (step.path("title").asText().hashCode() % 6 == 0) {
            step.put("beside", true);
        }
        step.putObject("student").put("quick", "1 min").put("usual", chance.of("2 min", "90 s", "1 min")).put("slow", chance.of("3 min", "20 min", "2 h"));
        if (chance.once(3)) {
            step.put("repeats", chance.of("3", "length / 1 cm", "1/3", "0"));
        }
        if (chance.once(4)) {
            step.put("share", chance.of(0.01, 0.5, 0.9, 1.0));
        }
        if (chance.once(3)) {
            step.putObject("help").put("calls", chance.of(0, 1, 7.5, 60).doubleValue()).put("lasts", chance.of("1 min", "30 s", "10 min"));
        }
    }

    private void leftToDry(ObjectNode step) {
        if (chance.once(3)) {
            step.put("at_home", true);
        }
        if (chance.once(4)) {
            step.put("at_most", chance.of("31 d", "60 d"));
        }
    }

    private void follows(ObjectNode step, int number, String kind) {
        if (number == 0 || kind.equals("ahead") || chance.once(3)) {
            return;
        }
        ObjectNode link = step.putArray("after").addObject().put("step", "step_" + chance.between(0, number - 1));
        if (chance.once(3)) {
            link.put("least", chance.of("0 min", "5 min", "-2 min", "1 h"));
        }
        if (chance.once(6)) {
            link.put("most", chance.of("1 h", "3 d", "60 d"));
        }
    }

    private void words(ObjectNode step) {
        if (chance.once(2)) {
            step.put("text", chance.words(10_000));
        }
        if (chance.once(5)) {
            step.put("left_handed", chance.words(300)).put("link", "https://example.org/knots?of=1&more=2");
        }
        if (project.has("pictures") && chance.once(3)) {
            step.putArray("pictures").add("cover");
        }
    }

    private void uses(ObjectNode step) {
        if (!tools.isEmpty() && chance.once(2)) {
            ObjectNode use = step.putArray("tools").addObject().put("tool", chance.of(tools)).put("each", chance.edge(1, 2, 20));
            if (step.path("title").asText().hashCode() % 5 == 0) {
                use.put("shared_by", 2);
            }
        }
    }

    private void hazards(ObjectNode place) {
        if (chance.once(4)) {
            place.putArray("hazards").add(chance.of("sharp-tools", "nickel", "solvent-vapour", "hot-wax"));
        }
    }
}
