package benchful.plans.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.core.sizing.PlacedBead;
import benchful.core.sizing.Strand;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StrandPictureTest {

    @Test
    void showsEveryBeadOnceInRowsNoWiderThanThePage() {
        List<StrandPicture.Row> rows = new StrandPicture(strand(60, 8), 170, false).rows();
        assertThat(rows).extracting(StrandPicture.Row::words).containsExactly("Row 1, beads 1 to 20", "Row 2, beads 21 to 40", "Row 3, beads 41 to 60");
        assertThat(rows).allSatisfy(row -> assertThat(row.svg().split("<ellipse")).hasSize(21));
        assertThat(rows.get(0).svg()).startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"170mm\"");
    }

    @Test
    void numbersEveryTenthBeadAndRunsTheRulerOn() {
        List<StrandPicture.Row> rows = new StrandPicture(strand(60, 8), 170, false).rows();
        assertThat(rows.get(0).svg()).contains(">10</text>", ">20</text>", ">0 cm</text>", ">15</text>");
        assertThat(rows.get(1).svg()).contains(">30</text>", ">18</text>").doesNotContain(">15</text>");
    }

    @Test
    void drawsABeadWiderThanThePageAlone() {
        assertThat(new StrandPicture(strand(2, 60), 50, true).rows()).hasSize(2);
    }

    private static Strand strand(int beads, int size) {
        List<PlacedBead> placed = new ArrayList<>();
        for (int i = 0; i < beads; i++) {
            placed.add(new PlacedBead("round", Quantity.parse("%d mm".formatted(i * (size + 1) - i / 2)), Quantity.of(size, Unit.MM)));
        }
        return new Strand(placed, Map.of("round", beads), beads + 1, Quantity.of(500, Unit.MM), Quantity.zero(Unit.MM), Quantity.of(600, Unit.MM), List.of());
    }
}
