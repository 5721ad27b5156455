package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.classes.ClassFile;
import benchful.web.forms.SpecSchema;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Classes that nobody thought of, from their file to their end. */
@QuarkusTest
class LivesTest {
    private static final long FIRST = Long.getLong("benchful.lives.first", 1);
    private static final int LIVES = Effort.of(12, 3000);

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @BeforeEach
    void emptyShelves() {
        data.nothing();
    }

    @Test
    void areLivedToTheirEndAndComeBackAsTheyWere() throws IOException {
        Outcomes lives = new Outcomes("lives");
        List<String> refused = new ArrayList<>();
        for (long seed = FIRST; seed < FIRST + LIVES; seed++) {
            try {
                List<String> refusals = new ClassLife(address, seed, lives).lived();
                refused.addAll(refusals);
                lives.count(refusals.isEmpty() ? "lived to their end" : "refused");
            } catch (AssertionError | RuntimeException e) {
                lives.fault("life %d: %s".formatted(seed, e.getMessage().lines().limit(6).reduce("", (a, b) -> a + "\n  " + b)));
                lives.count("broken off");
                data.nothing();
            }
        }
        lives.tell();
        lives.tellDearest();
        assertThat(lives.faults()).isEmpty();
        assertThat(lives.of("lived to their end")).as("many files are taken, and these were refused: %s", refused).isGreaterThan(LIVES / 3);
    }

    /** A generator that leaves out a field proves nothing of it: whatever the schemas know is made sooner or later. */
    @Test
    void useEveryFieldThatTheSchemasKnow() {
        Set<String> made = new TreeSet<>();
        LongStream.range(1, 200).forEach(seed -> fields(new ClassFileMaker(seed).made(), "", made));
        Set<String> known = new TreeSet<>();
        known(SpecSchema.of(ClassFile.class), "", known);
        assertThat(made).containsAll(known);
    }

    private static void fields(JsonNode node, String at, Set<String> fields) {
        node.fields().forEachRemaining(f -> {
            fields.add(at + "/" + f.getKey());
            fields(f.getValue(), at + "/" + f.getKey(), fields);
        });
        if (node.isArray()) {
            node.forEach(n -> fields(n, at + "/0", fields));
        }
    }

    private static void known(SpecSchema schema, String at, Set<String> fields) {
        JsonNode here = schema.at(at);
        here.path("properties").fieldNames().forEachRemaining(name -> {
            fields.add(at + "/" + name);
            known(schema, at + "/" + name, fields);
        });
        if (here.has("items")) {
            known(schema, at + "/0", fields);
        }
    }
}
