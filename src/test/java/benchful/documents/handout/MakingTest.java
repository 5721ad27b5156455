package benchful.documents.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import benchful.classes.ClassFile;
import benchful.documents.PrintSamples;
import benchful.documents.parts.PrintSource;
import benchful.projects.Step;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order in which readers come to the steps, and what they do while they wait. */
class MakingTest {
    private static final int LAYERS = 14;

    /** Each step of a layer follows all three of the layer before: there are three to the fourteenth ways back to the first. */
    @Test
    void findsWhatIsDoneDuringAWaitAmongStepsInLayers() throws IOException {
        ObjectNode whole = SpecFormat.yaml().valueToTree(PrintSamples.strand());
        ArrayNode steps = ((ObjectNode) whole.get("project")).putArray("steps");
        steps.add(step("glue", "make", List.of()).set("student", SpecFormat.yaml().readTree("{quick: 1 min, usual: 1 min, slow: 1 min}")));
        steps.add(step("dries", "wait", List.of("glue")).put("lasts", "30 min"));
        for (int layer = 0; layer < LAYERS; layer++) {
            List<String> before = layer == 0 ? List.of() : layer(layer - 1);
            layer(layer).forEach(id -> steps.add(step(id, "together", before).put("lasts", "1 min")));
        }
        PrintSource source = PrintSamples.source(SpecFormat.yaml().treeToValue(whole, ClassFile.class), "knotted-strand");
        Making making = new Making(source);
        Step dries = source.file().project().step("dries").orElseThrow();
        List<Integer> during = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> making.during(dries));
        assertThat(during).hasSizeBetween(30, 31).doesNotContain(making.numbers().get("glue"), making.numbers().get("dries"));
    }

    private static List<String> layer(int number) {
        return List.of("a" + number, "b" + number, "c" + number);
    }

    private static ObjectNode step(String id, String kind, List<String> after) {
        ObjectNode step = SpecFormat.yaml().createObjectNode().put("id", id).put("title", id).put("kind", kind);
        ArrayNode follows = step.putArray("after");
        after.forEach(before -> follows.addObject().put("step", before));
        return step;
    }
}
