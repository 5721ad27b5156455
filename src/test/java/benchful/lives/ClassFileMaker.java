package benchful.lives;

import benchful.core.quantity.Dimension;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** Makes whole class files: a project, a class of it, a room, and a catalogue that sells some of what it needs. */
final class ClassFileMaker {
    /** The first numbers of near seeds are near each other. */
    private static final long FAR_APART = 0x9E3779B97F4A7C15L;

    private final Chance chance;
    private final Chance ordering;
    private final Chance timing;
    private final Chance taking;
    private final Chance resting;
    private final Chance found;
    private final Chance showing;
    private final Chance photographing;
    private final String mark;
    private final ObjectNode file = SpecFormat.json().createObjectNode();
    private final ProjectMaker maker;

    /** @param seed the same file for the same seed; also tells its names apart from every other file's */
    ClassFileMaker(long seed) {
        this.chance = new Chance(seed);
        this.mark = " of life " + seed;
        this.ordering = new Chance(seed * FAR_APART);
        this.timing = new Chance((seed + 1) * -FAR_APART);
        this.resting = new Chance((seed + 3) * -FAR_APART);
        this.taking = new Chance((seed + 4) * FAR_APART);
        this.showing = new Chance((seed + 6) * -FAR_APART);
        this.found = new Chance((seed + 5) * -FAR_APART);
        this.photographing = new Chance((seed + 2) * FAR_APART);
        this.maker = new ProjectMaker(chance);
    }

    ObjectNode made() {
        file.put("benchful", "class/1");
        file.set("project", maker.made("Project" + mark));
        file.set("class", setup());
        if (chance.mostly()) {
            file.set("venue", venue());
        }
        suppliers();
        materials();
        photos();
        return file;
    }

    private void photos() {
        if (photographing.once(3)) {
            photographing.few(1, 2, 12, i -> i).forEach(i -> photo(file.withArray("photos").addObject()));
        }
    }

    private void photo(ObjectNode photo) {
        String format = photographing.of("png", "jpeg");
        if (photographing.mostly()) {
            photo.put("caption", photographing.words(200));
        }
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(photographing.between(1, 40), photographing.between(1, 40), BufferedImage.TYPE_INT_RGB), format, content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        photo.put("media_type", "image/" + format).put("content", content.toByteArray());
    }

    private ObjectNode setup() {
        ObjectNode setup = SpecFormat.json().createObjectNode();
        int headcount = chance.edge(1, 12, 40);
        setup.put("title", chance.words(200) + mark).put("headcount", headcount).put("level", chance.of("beginner", "improver", "experienced"));
        meetings(setup.putArray("meetings"));
        people(setup, headcount);
        numbers(setup, headcount);
        more(setup);
        return setup;
    }

    private void meetings(ArrayNode meetings) {
        chance.few(1, 2, 20, i -> i).forEach(i -> meetings.addObject()
                .put("date", "2027-%02d-%02d".formatted(3 + i / 28, 1 + i % 28)).put("starts", chance.of("00:00", "10:00", "09:30"))
                .put("ends", chance.of("17:00", "12:00", "23:59", "10:01")));
    }

    private void people(ObjectNode setup, int headcount) {
        List<String> sizes = sizes();
        if (chance.once(2)) {
            int mixed = chance.between(0, headcount);
            setup.putObject("sizes").put(chance.of(sizes), mixed);
        }
        if (chance.once(2)) {
            ArrayNode students = setup.putArray("students");
            for (int i = 0; i < chance.between(1, headcount); i++) {
                student(students.addObject(), i, sizes);
            }
        }
        if (chance.once(2)) {
            setup.put("demonstration", chance.of(sizes));
        }
    }

    private void student(ObjectNode student, int number, List<String> sizes) {
        student.put("name", chance.words(100));
        if (chance.once(2)) {
            student.put("seat", "B" + number).put("size", chance.of(sizes)).put("left_handed", chance.once(2)).put("large_print", chance.once(3));
        }
        if (chance.once(3)) {
            student.put("needs", chance.words(300)).putObject("emergency").put("name", chance.words(120)).put("phone", "0100 555 01");
        }
        if (chance.once(3)) {
            student.put("level", chance.of("beginner", "improver", "experienced"));
        }
        picks(student);
    }

    /** Choices and what stands in, of lines that give them. */
    private void picks(ObjectNode place) {
        for (JsonNode line : file.at("/project/materials")) {
            String material = line.get("material").asText();
            if (line.has("choice") && chance.once(3)) {
                String chosen = line.has("alternatives") ? line.at("/alternatives/0").asText() : chance.words(120);
                place.withObject("/choices").put(material, chosen);
            } else if (chance.once(12)) {
                place.withArray("/instead").addObject().put("of", material).put("use", chance.once(6) ? "another thing" : chance.of(listed()));
            }
        }
    }

    private void numbers(ObjectNode setup, int headcount) {
        setup.put("spares", chance.edge(0, 2, 100)).put("helpers", chance.edge(0, 1, 20)).put("own_pace", chance.once(4));
        if (chance.once(3)) {
            setup.put("groups", chance.between(1, Math.min(headcount, 4)));
        }
        if (chance.once(3)) {
            setup.put("promise", chance.of("half", "three_in_four", "nine_in_ten"));
        }
        if (chance.once(3)) {
            setup.put("share", chance.of(0.05, 0.8, 1.0));
        }
        if (chance.once(3)) {
            setup.put("youngest", chance.edge(3, 30, 120));
        }
    }

    private void more(ObjectNode setup) {
        if (ordering.once(4)) {
            ArrayNode order = setup.putArray("own_order");
            file.at("/project/steps").forEach(step -> {
                if (List.of("show", "make", "together").contains(step.path("kind").asText()) && ordering.once(2)) {
                    order.add(step.get("id").asText());
                }
            });
        }
        if (taking.once(4)) {
            file.at("/project/steps").forEach(step -> {
                if (step.path("kind").asText().equals("make") && taking.once(3)) {
                    setup.withArray("homework").add(step.get("id").asText());
                }
            });
        }
        if (showing.once(3)) {
            file.at("/project/steps").forEach(step -> {
                if (step.path("kind").asText().equals("show") && showing.once(2)) {
                    setup.withArray("shown_to_groups").add(step.get("id").asText());
                }
            });
        }
        if (found.once(4)) {
            List<String> steps = file.at("/project/steps").findValuesAsText("id");
            setup.put("found_order", found.of(steps) + " " + found.of(steps) + "/" + found.between(1, 3) + found.of("", " nothing/2", " / ?"));
        }
        if (timing.once(3)) {
            List<String> steps = file.at("/project/steps").findValuesAsText("id");
            setup.putArray("own_times").addObject().put("step", timing.of(steps)).put("meeting", 1).put("at", setup.at("/meetings/0/starts").asText());
        }
        if (chance.once(2)) {
            ObjectNode pause = setup.putArray("breaks").addObject().put("at", chance.of("10:30", "11:00", "00:00", "23:58")).put("lasts", chance.of("10 min", "1 h"));
            if (chance.once(2)) {
                pause.put("latest", chance.of("11:30", "23:59"));
            }
            if (resting.once(3)) {
                pause.put("meeting", resting.edge(1, 1, 20));
            }
        }
        if (chance.once(3)) {
            ObjectNode rest = setup.putObject("rest").put("after", chance.of("15 min", "55 min")).put("lasts", chance.of("3 min", "10 min", "2 h"));
            if (resting.once(3)) {
                rest.put("meeting", resting.edge(1, 1, 20));
            }
        }
        if (chance.once(3)) {
            setup.putArray("prepared_ahead").add(chance.of(file.at("/project/steps").findValuesAsText("id")));
        }
        if (chance.once(3)) {
            setup.putObject("tools").put("tool 0", chance.edge(0, 4, 1000));
        }
        if (chance.once(2)) {
            setup.put("currency", "EUR").putObject("costs").put("fee", 45.5).put("helper", 0).put("room", 1_000_000);
        }
        if (chance.once(3)) {
            setup.put("notes", chance.words(10_000));
        }
        picks(setup);
    }

    private ObjectNode venue() {
        ObjectNode venue = SpecFormat.json().createObjectNode().put("name", "Room" + mark);
        if (chance.mostly()) {
            venue.put("benchful", "venue/1");
            venue.put("address", chance.words(300)).put("seats", chance.edge(1, 12, 500)).put("sockets", chance.edge(0, 4, 1000))
                    .put("ventilation", chance.of("none", "windows", "extractor")).put("water", chance.once(2)).put("first_aid", chance.once(2));
            venue.putObject("tools").put("tool 0", chance.edge(0, 5, 1000)).put("tool 1", 3);
            venue.putArray("rules").add(chance.words(300));
            venue.put("notes", chance.words(10_000));
            venue.putArray("hazards").add(chance.of("slips-trips", "lifting"));
            ObjectNode emergency = venue.putObject("emergency");
            List.of("call", "exits", "assembly", "fire", "first_aid", "defibrillator", "hospital", "keeper").forEach(field -> emergency.put(field, chance.words(300)));
        }
        return venue;
    }

    private void suppliers() {
        ArrayNode suppliers = file.putArray("suppliers");
        for (int i = 0; i < 2; i++) {
            ObjectNode supplier = suppliers.addObject().put("name", "Supplier " + i + mark).put("currency", chance.of("GBP", "EUR"));
            if (chance.once(2)) {
                supplier.put("minimum_order", chance.of(0, 10, 1_000_000)).put("delivery", 4.5).put("free_above", chance.of(0, 50))
                        .put("lead_days", chance.edge(0, 10, 365)).put("weekdays", chance.once(2)).put("vat", chance.of(0, 20, 100)).put("contact", chance.words(300)).put("customer_number", chance.words(60));
            }
        }
    }

    private void materials() {
        ArrayNode materials = file.putArray("materials");
        Map<String, Dimension> used = maker.materialsUsed();
        used.forEach((name, dimension) -> {
            if (chance.mostly()) {
                ObjectNode material = materials.addObject().put("name", name);
                material(material, dimension);
                if ((name + mark).hashCode() % 6 == 0) {
                    materials.addObject().put("name", name + ", blue").put("variant_of", name).put("unit", material.get("unit").asText());
                }
            }
        });
    }

    private void material(ObjectNode material, Dimension dimension) {
        material.put("unit", dimension.equals(Dimension.AREA) ? chance.of(chance.unit(dimension).symbol(), "sheets 70 x 50 cm", "m x 140 cm") : chance.unit(dimension).symbol());
        if (chance.once(2)) {
            material.put("on_hand", chance.of("0 ", "1 ", "50 ") + chance.unit(dimension).symbol()).put("minimum", chance.amount(dimension));
        }
        if (chance.once(3)) {
            material.putObject("waste").put("beginner", 15).put("improver", 0).put("experienced", 95);
            material.put("note", chance.words(300)).putArray("hazards").add("nickel");
        }
        if (chance.once(4)) {
            material.put("confidence", chance.of(0.01, 0.95, 0.999));
        }
        if (chance.once(4)) {
            material.put("unit_mass", chance.amount(Dimension.MASS));
        }
        cut(material, dimension);
        List<ObjectNode> offers = new ArrayList<>();
        chance.few(0, 2, 6, i -> i).forEach(i -> offers.add(offer(dimension)));
        material.putArray("offers").addAll(offers);
    }

    private void cut(ObjectNode material, Dimension dimension) {
        boolean length = dimension.equals(Dimension.LENGTH);
        if (!length && !dimension.equals(Dimension.AREA)) {
            return;
        }
        if (chance.once(2)) {
            material.put("cut_loss", chance.of("0 mm", "2 mm", "0.1 in"));
        }
        if (chance.once(3)) {
            ObjectNode piece = material.putArray("pieces").addObject().put("length", chance.of("700 mm", "2 ft", "1 m"));
            if (!length) {
                piece.put("width", "300 mm");
            }
        }
    }

    private ObjectNode offer(Dimension dimension) {
        ObjectNode offer = SpecFormat.json().createObjectNode().put("supplier", "Supplier " + chance.between(0, 1) + mark);
        offer.put("holds", holds(dimension)).put("price", chance.of(0, 0.01, 3.35, 12.5, 999_999.99).doubleValue());
        if (dimension.equals(Dimension.LENGTH) && chance.once(2)) {
            offer.put("lengths", chance.edge(1, 12, 10_000));
        }
        if (dimension.equals(Dimension.AREA) && chance.once(4)) {
            offer.put("holds", chance.of("1 m x 140 cm", "0.1 m x 0.9 m", "2 yd x 54 in"));
        } else if (dimension.equals(Dimension.AREA)) {
            offer.putObject("sheet").put("length", "70 cm").put("width", "50 cm");
        }
        if (chance.once(4)) {
            offer.put("article", chance.words(60)).put("link", chance.of("https://example.com/a?b=1", "http://example.org/" + "x".repeat(200)));
        }
        if (chance.once(4)) {
            offer.putArray("breaks").addObject().put("packs", chance.edge(2, 10, 100_000)).put("price", 0);
        }
        return offer;
    }

    private String holds(Dimension dimension) {
        if (dimension.equals(Dimension.AREA)) {
            return chance.of("3500 cm2", "7000 cm2", "0.35 m2");
        }
        return dimension.equals(Dimension.LENGTH) ? chance.of("700 mm", "5 m", "1234.567 in", "10 yd") : chance.amount(dimension);
    }

    /** Of these some are counted otherwise than what they stand in for. */
    private List<String> listed() {
        return List.copyOf(maker.materialsUsed().keySet());
    }

    private List<String> sizes() {
        return file.at("/project/sizes").findValuesAsText("name");
    }
}
