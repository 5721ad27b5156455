package benchful.documents.labels;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.LabelStock;
import benchful.documents.pdf.Glyphs;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelFitterTest {
    private static final double POINTS = 72 / 25.4;

    @Test
    void keepsAShortLabelInItsLargestLetters() {
        List<LabelFitter.Text> texts = new LabelFitter(LabelStock.COMMON.get(1), true, 0).fit(
                new KitLabel("Ada Example", "Seat 1 · 42 cm", "Necklace", List.of("12 beads", "1 clasp"), "", List.of("small parts")));
        assertThat(texts).containsExactly(
                LabelFitter.Text.of(true, 12, List.of("Ada Example")),
                LabelFitter.Text.of(true, 8, List.of("Seat 1 · 42 cm")),
                LabelFitter.Text.of(false, 6.5, List.of("Necklace")),
                LabelFitter.Text.of(false, 8, List.of("☐\u00a012 beads", "☐\u00a01 clasp")),
                LabelFitter.Text.of(true, 6.5, List.of("Caution: small parts")));
    }

    @Test
    void countsTheContentsThatFindNoRoom() {
        List<String> contents = IntStream.rangeClosed(1, 20).mapToObj(i -> i + " rather long names of a material " + i).toList();
        List<LabelFitter.Text> texts = new LabelFitter(LabelStock.COMMON.get(4), true, 0).fit(
                new KitLabel("Ada Example", "42 cm", "Necklace", contents, "", List.of()));
        String shown = String.join(" ", texts.get(3).lines());
        assertThat(texts.get(3).size()).isEqualTo(5.5);
        assertThat(shown).matches(".* · \\+\\d+ more: see packing list");
        int left = Integer.parseInt(shown.replaceAll(".*\\+(\\d+) more.*", "$1"));
        assertThat(shown.split(" · ")).hasSize(20 - left + 1);
    }

    @Test
    void cutsANameThatIsTooLongForTheSmallestLetters() {
        String name = "Wilhelmina-Philippa of the Extraordinarily Long and Winding Family Name";
        LabelFitter.Text fitted = new LabelFitter(LabelStock.COMMON.get(4), true, 0).fit(new KitLabel(name, "M", "Necklace", List.of(), "", List.of())).get(0);
        assertThat(fitted.size()).isEqualTo(8);
        assertThat(fitted.lines().get(0)).endsWith("…").startsWith("Wilhelmina-Philippa");
    }

    /** Names and contents of any length and script, on every sheet: no line is wider than its room, no text stands lower than the label. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neverOverflows(long seed) {
        Random random = new Random(seed);
        for (LabelStock sheet : LabelStock.COMMON) {
            for (int i = 0; i < 40; i++) {
                LabelFitter fitter = new LabelFitter(sheet, random.nextBoolean(), random.nextInt(5));
                KitLabel label = new KitLabel(words(random, 12), words(random, 6), words(random, 12), list(random, 25), words(random, 4), list(random, 8));
                holds(sheet, fitter, label);
            }
        }
    }

    /** Signs stand within the label, below its code and clear of each other. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 9})
    void keepsSignsInsideTheLabel(int wanted) {
        for (LabelStock sheet : LabelStock.COMMON) {
            for (boolean codes : new boolean[] {true, false}) {
                LabelFitter fitter = new LabelFitter(sheet, codes, wanted);
                assertThat(fitter.signs()).as(sheet.title()).isBetween(1, wanted);
                assertThat(fitter.code()).isIn(0.0, fitter.code() >= 12 ? fitter.code() : 0.0);
                for (int i = 0; i < fitter.signs(); i++) {
                    LabelFitter.Place place = fitter.sign(i);
                    assertThat(place.left() + place.size()).isLessThanOrEqualTo(sheet.width() - fitter.edge() + 1e-9);
                    assertThat(place.top() + place.size()).isLessThanOrEqualTo(sheet.height() - fitter.edge() + 1e-9);
                    assertThat(place.top()).isGreaterThanOrEqualTo(fitter.edge() + fitter.code());
                }
            }
        }
    }

    private static void holds(LabelStock sheet, LabelFitter fitter, KitLabel label) {
        double beside = fitter.code() > 0 ? fitter.code() : fitter.signs() > 0 ? fitter.sign(0).size() : 0;
        double across = (sheet.width() - 2 * fitter.edge() - (beside == 0 ? 0 : beside + 1.5)) * POINTS;
        double down = (sheet.height() - 2 * fitter.edge()) * POINTS;
        List<LabelFitter.Text> texts = fitter.fit(label);
        assertThat(texts.stream().mapToDouble(LabelFitter.Text::height).sum()).as(label.toString()).isLessThanOrEqualTo(down + 1e-6);
        for (LabelFitter.Text text : texts) {
            Glyphs glyphs = text.bold() ? Glyphs.BOLD : Glyphs.PLAIN;
            assertThat(text.lines()).allSatisfy(line -> assertThat(glyphs.width(line, text.size())).as(line).isLessThanOrEqualTo(across + 1e-6));
        }
    }

    private static List<String> list(Random random, int most) {
        List<String> list = new ArrayList<>();
        for (int i = random.nextInt(most); i > 0; i--) {
            list.add(words(random, 7));
        }
        return list;
    }

    private static String words(Random random, int most) {
        String[] letters = {"a", "W", "ż", "ł", "Ω", "ή", "春", "한", "ß", "1", "m", "-"};
        StringBuilder words = new StringBuilder("x");
        for (int i = random.nextInt(most * 8); i > 0; i--) {
            words.append(random.nextInt(9) == 0 ? " " : letters[random.nextInt(letters.length)]);
        }
        return words.toString().strip();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void keepsSeatsInsideTheirLabels(int sheet) {
        LabelStock labels = LabelStock.COMMON.get(sheet);
        LabelFitter fitter = new LabelFitter(labels, true, 0);
        List<LabelFitter.Text> texts = fitter.fit(new SeatLabel("Wilhelmina Konstancja Brzęczyszczykiewicz-Papadopoulou", "Seat 12", "42 cm · Knotted strand of amazonite and pearls"));
        assertThat(texts).hasSize(3);
        assertThat(texts.stream().mapToDouble(LabelFitter.Text::height).sum()).isLessThanOrEqualTo((labels.height() - 2 * fitter.edge()) * POINTS + 1e-9);
        double across = (labels.width() - 2 * fitter.edge() - fitter.code() - (fitter.code() > 0 ? 1.5 : 0)) * POINTS;
        texts.forEach(text -> assertThat((text.bold() ? Glyphs.BOLD : Glyphs.PLAIN).width(text.lines().get(0), text.size())).isLessThanOrEqualTo(across));
        assertThat(texts.get(0).lines()).containsExactly("Seat 12");
    }
}
