package benchful.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Offset.offset;

import benchful.studio.Paper;
import org.junit.jupiter.api.Test;

class LabelStockTest {

    /** Two margins, labels and gaps make the page; sources of these dimensions differ by up to 0.3 mm. */
    @Test
    void closesEveryCommonSheetOnItsPaper() {
        assertThat(LabelStock.COMMON).hasSizeGreaterThanOrEqualTo(6).allSatisfy(sheet -> {
            double across = 2 * sheet.left() + (sheet.columns() - 1) * sheet.pitchX() + sheet.width();
            double down = 2 * sheet.top() + (sheet.rows() - 1) * sheet.pitchY() + sheet.height();
            assertThat(across).as(sheet.title()).isCloseTo(sheet.paper().width(), offset(0.3));
            assertThat(down).as(sheet.title()).isCloseTo(sheet.paper().height(), offset(0.3));
        });
    }

    @Test
    void saysWhatDoesNotFit() {
        assertThatIllegalArgumentException().isThrownBy(() -> LabelStock.of(Paper.A4, 4, 7, 63.5, 38.1, 7.25, 15.15, 66, 38.1))
                .withMessage("4 labels across do not fit on A4.");
        assertThatIllegalArgumentException().isThrownBy(() -> LabelStock.of(Paper.LETTER, 3, 11, 66.675, 25.4, 4.7625, 12.7, 69.85, 25.4))
                .withMessage("11 labels down do not fit on US Letter.");
        assertThatIllegalArgumentException().isThrownBy(() -> LabelStock.of(Paper.A4, 2, 2, 60, 30, 5, 5, 40, 30))
                .withMessageStartingWith("The pitch is measured from edge to edge");
        assertThatIllegalArgumentException().isThrownBy(() -> LabelStock.of(Paper.A4, 2, 2, Double.NaN, 30, 5, 5, 40, 30));
        assertThatIllegalArgumentException().isThrownBy(() -> new LabelSetting(LabelStock.COMMON.get(0), 22, 0, 0, LabelKind.KITS))
                .withMessage("The first label's position is from 1 to 21 on this sheet, not 22.");
    }
}
