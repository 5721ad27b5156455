package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.projects.ProjectSpec;
import benchful.samples.SampleFiles;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sample class files, spoilt in thousands of ways: whatever is in a file, it is planned or refused with sentences that name
 * their place and speak of the bench, never of the program's insides. More ways with {@code -Dbenchful.mutations=100000}.
 */
@Tag("long")
class MutatedFilesTest {
    private static final int MUTATIONS = Integer.getInteger("benchful.mutations", 600);
    private static final int PLANNED = 25;
    private static final Pattern INSIDES = Pattern.compile("\\b(java|com|org|io|jakarta|benchful)\\.[a-z]+|Exception|\\bnull\\b|deserializ|[a-z]\\w*\\(\\)|@[0-9a-f]{6}|regex|\\b[a-z]+[A-Z]\\w*Node");
    private static final String LONG = "A".repeat(200_001);
    private static final List<String> ODD = List.of("\"\"", "null", "0", "-1", "1e99", "1e-99", "99999999999999999999", "0.1234567890123456", "\"2027-02-30\"", "\"2027-13-01\"",
            "\"0000-01-01\"", "\"9999-12-31\"", "\"25:00\"", "\"18:30\\n\"", "\"2027-03-06\\n\"", "\"1000 km\"", "\"1000000 m\"", "\"999999999999999999 mm\"", "\"0 mm\"",
            "\"0.000000000001 mm\"", "\"3 g\"", "\"3 ml\"", "\"-3 cm\"", "\"1/3\"", "\"length / 0\"", "\"length ^ 40\"", "\"sqrt(-1)\"", "\"9999 d\"", "\"99999 h\"", "\"-60 d\"", "\"NaN\"",
            "true", "[]", "{}", "[[[]]]", "{\"a\": {\"b\": 1}}", "[1, 2]", "\"\\u0000\"", "\"\\ud800\"", "\"😀\"", "\"%s %d %n\"", "\"{0}\"", "\"GBP\"", "\"XXX\"", "1000", "200");
    private static final List<String> BROKEN = List.of("\t", "\u0000", ":", "- ", "'", "\"", "{", "}", "[", "]", "&a ", "*a", "!!java.lang.String ", "? ", "|", ">", "#", "%", "\n", ",", "\\", "---\n", "\uFEFF");

    private final ClassFileReader files = BroughtHazards.reader();
    private final Random random = new Random(20_27);

    @Test
    void refusesSpoiltValuesAtTheirPlaceAndPlansTheRest() throws Exception {
        List<ObjectNode> samples = samples();
        int planned = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            ObjectNode file = samples.get(i % samples.size()).deepCopy();
            IntStream.rangeClosed(0, random.nextInt(2)).forEach(n -> spoil(file));
            byte[] text = i % 2 == 0 ? SpecFormat.yaml().writeValueAsBytes(file) : SpecFormat.json().writerWithDefaultPrettyPrinter().writeValueAsBytes(file);
            SpecReader.Reading<ClassFile> reading = read(text);
            if (reading instanceof SpecReader.Read<ClassFile> read) {
                plan(read.sheet(), planned++ % PLANNED == 0, text);
            }
        }
        assertThat(planned).as("of those that are no fault").isPositive();
    }

    @Test
    void refusesSpoiltTextsAtTheirLine() throws Exception {
        List<byte[]> texts = new ArrayList<>();
        for (ObjectNode sample : samples()) {
            texts.add(SpecFormat.yaml().writeValueAsBytes(sample));
            texts.add(SpecFormat.json().writerWithDefaultPrettyPrinter().writeValueAsBytes(sample));
        }
        for (int i = 0; i < MUTATIONS; i++) {
            byte[] text = texts.get(i % texts.size());
            read(i % 5 == 0 ? withByte(text) : withText(new String(text, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        }
    }

    private SpecReader.Reading<ClassFile> read(byte[] text) {
        try {
            SpecReader.Reading<ClassFile> reading = files.read(text);
            if (reading instanceof SpecReader.Faulty<ClassFile> faulty) {
                assertThat(faulty.faults()).isNotEmpty().allSatisfy(fault -> check(faulty, fault));
            }
            return reading;
        } catch (RuntimeException e) {
            return fail("Reading failed:\n" + new String(text, StandardCharsets.UTF_8).lines().limit(400).reduce("", (a, b) -> a + "\n" + b), e);
        }
    }

    private static void check(SpecReader.Faulty<ClassFile> faulty, Fault fault) {
        assertThat(fault.detail().replaceAll("“[^”]*”", "“”")).doesNotContainPattern(INSIDES).hasSizeLessThan(1_000).matches("(?s).*[.!?]");
        assertThat(faulty.line(fault.pointer())).as("line of “%s”: %s", fault.pointer(), fault.detail()).isPresent();
    }

    private void plan(ClassFile file, boolean wholly, byte[] text) {
        try {
            MaterialsPlan plan = MaterialsPlanner.plan(file);
            assertThat(plan.faults()).allSatisfy(fault -> assertThat(fault.detail().replaceAll("“[^”]*”", "“”")).doesNotContainPattern(INSIDES));
            String answer = SpecFormat.json().writeValueAsString(wholly ? ComputedPlans.of(file) : plan);
            assertThat(answer).doesNotContainPattern("\\d\\.\\d{13,} [a-z%]");
            assertThat(read(files.yaml(file).getBytes(StandardCharsets.UTF_8))).isInstanceOf(SpecReader.Read.class);
        } catch (Exception e) {
            fail("Planning failed:\n" + new String(text, StandardCharsets.UTF_8), e);
        }
    }

    /** The samples without their pictures, which are files of their own. */
    private static List<ObjectNode> samples() {
        SampleFiles samples = SampleFiles.read();
        return samples.classes().stream().map(c -> {
            ProjectSpec project = samples.projects().stream().filter(p -> p.name().equals(c.project())).findFirst().orElseThrow();
            ClassFile file = new ClassFile(project, c.setup(), samples.venues().stream().filter(v -> v.name().equals(c.venue())).findFirst().orElse(null),
                    samples.catalogue().materials().stream().filter(m -> project.materials().stream().anyMatch(l -> l.offered().contains(m.name()))).toList(),
                    samples.catalogue().suppliers());
            ObjectNode tree = SpecFormat.json().valueToTree(file);
            ((ObjectNode) tree.get("project")).path("pictures").forEach(p -> ((ObjectNode) p).remove("content"));
            return tree;
        }).toList();
    }

    private void spoil(ObjectNode file) {
        List<JsonNode> containers = new ArrayList<>();
        collect(file, containers);
        JsonNode container = containers.get(random.nextInt(containers.size()));
        if (container instanceof ObjectNode object) {
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            String key = keys.isEmpty() ? "new" : keys.get(random.nextInt(keys.size()));
            switch (random.nextInt(12)) {
                case 0 -> object.remove(key);
                case 1 -> object.set(random.nextBoolean() ? "new / ~ key" : LONG, odd());
                case 2 -> object.put(key, LONG);
                default -> object.set(key, odd());
            }
        } else if (container instanceof ArrayNode list) {
            int at = list.isEmpty() ? 0 : random.nextInt(list.size());
            switch (random.nextInt(4)) {
                case 0 -> list.removeAll();
                case 1 -> IntStream.range(0, 300).forEach(i -> list.add(list.isEmpty() ? odd() : list.get(0).deepCopy()));
                default -> list.insert(at, odd());
            }
        }
    }

    private static void collect(JsonNode node, List<JsonNode> containers) {
        if (node.isContainerNode()) {
            containers.add(node);
            node.forEach(child -> collect(child, containers));
        }
    }

    private JsonNode odd() {
        try {
            return SpecFormat.json().readTree(ODD.get(random.nextInt(ODD.size())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String withText(String text) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + random.nextInt(8));
        String put = BROKEN.get(random.nextInt(BROKEN.size()));
        return text.substring(0, at) + (random.nextInt(6) == 0 ? put.repeat(60) : random.nextInt(8) == 0 ? "" : put) + text.substring(random.nextBoolean() ? at : end);
    }

    private byte[] withByte(byte[] text) {
        byte[] spoilt = text.clone();
        spoilt[random.nextInt(text.length)] = (byte) random.nextInt(256);
        return spoilt;
    }
}
