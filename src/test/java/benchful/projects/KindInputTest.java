package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Fields take what people write in them. */
class KindInputTest {
    @Test
    void readsPercentSignsFractionsCommasAndClockTimes() {
        ObjectNode tree = (ObjectNode) ProjectFiles.READER.written(ProjectSpecs.beadRing("Ring"));
        ((ObjectNode) tree.at("/materials/0")).put("waste", "7,5 %");
        ((ObjectNode) tree.at("/materials/1")).put("amount", "½ m + 2 × finger");
        ((ObjectNode) tree.at("/steps/1")).put("share", "90%");
        ((ObjectNode) tree.at("/steps/0")).put("lasts", "½ h");
        ((ObjectNode) tree.at("/steps/2")).put("lasts", "1:30");
        ((ObjectNode) tree.at("/sizes/0/measures")).put("finger", "5 1/2 cm");
        assertThat(ProjectFiles.READER.tree(tree)).isInstanceOfSatisfying(SpecReader.Read.class, read -> {
            ProjectSpec sheet = (ProjectSpec) read.sheet();
            assertThat(sheet.materials().get(0).waste()).isEqualByComparingTo("7.5");
            assertThat(sheet.steps().get(1).share()).isEqualByComparingTo("0.9");
            assertThat(sheet.steps().get(0).lasts()).isEqualTo(Duration.ofMinutes(30));
            assertThat(sheet.steps().get(2).lasts()).isEqualTo(Duration.ofMinutes(90));
            assertThat(sheet.sizes().get(0).measures().get("finger")).hasToString("5.5 cm");
        });
    }
}
