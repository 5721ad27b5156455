package benchful.plans.materials.sizes;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import benchful.projects.Sizing;
import benchful.projects.Sizing.Bead;
import benchful.projects.SizingKind;
import benchful.projects.Step;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PieceSizerTest {
    private static final Size SMALL = new Size("small", Map.of("length", Quantity.parse("42 cm"), "width", Quantity.parse("3 cm")));
    private static final Sizing STRAND = new Sizing("strand", SizingKind.STRAND,
            Map.of("target", "length", "closure", "25 mm", "knots", "1", "ends", "2", "cord", "0.6 mm"),
            List.of(new Bead("pearl 8 mm", "8 mm", null)));

    @Test
    void givesAnswersToLinesAndSteps() {
        SizedPiece piece = PieceSizer.size(project(List.of(STRAND), List.of(line("Pearl", "strand_pearl_8_mm", null),
                line("Silk", "2 * strand_thread + 30 cm", "1"), line("Cord", "10 cm", "strand_knots / 8")), "strand_knots"), SMALL);

        assertThat(piece.faults()).isEmpty();
        assertThat(piece.values()).containsEntry("strand_beads", Quantity.parse("43")).containsEntry("strand_length", Quantity.parse("419.4 mm"));
        assertThat(piece.lines()).containsExactly(
                new SizedPiece.Line(0, "Pearl", Quantity.parse("43"), null),
                new SizedPiece.Line(1, "Silk", Quantity.parse("1521.28 mm"), 1),
                new SizedPiece.Line(2, "Cord", Quantity.parse("10 cm"), 6));
        assertThat(piece.lines().get(2).amount()).isEqualTo(Quantity.parse("60 cm"));
        assertThat(piece.repeats()).isEqualTo(Map.of("knot", new BigDecimal("44")));
        assertThat(piece.strands().get("strand").beads()).hasSize(43);
    }

    @Test
    void saysAFaultOnceAndWhereItIs() {
        Sizing broken = new Sizing("strand", SizingKind.STRAND, Map.of("target", "lenght", "closure", "3 g", "colour", "1"), STRAND.beads());
        SizedPiece piece = PieceSizer.size(project(List.of(broken), List.of(line("Pearl", "strand_beads", null),
                line("Glue", "1 ml - 3 ml", null), line("Cord", "length +", null)), "strand_knots * 1 cm"), SMALL);

        assertThat(piece.faults()).extracting(Fault::pointer).containsExactlyInAnyOrder(
                "/sizing/0/values/target", "/sizing/0/values/closure", "/sizing/0/values/colour", "/materials/1/amount", "/materials/2/amount");
        assertThat(piece.faults()).extracting(Fault::detail).contains(
                "In “lenght”: “lenght” is neither a measure of this project nor a unit. Known measures: length, width.",
                "In “3 g”: it gives a mass, but a length is needed here.",
                "This comes to -2 ml; an amount can't be negative.");
    }

    @Test
    void addsUpOnlyAmountsOfOneKind() {
        SizedPiece piece = PieceSizer.size(project(List.of(), List.of(line("Glue", "1 ml", null), line("Glue", "0.1 floz", null), line("Glue", "3", null)), "1"), SMALL);

        assertThat(piece.lines()).extracting(SizedPiece.Line::line).containsExactly(0, 1);
        assertThat(piece.faults()).containsExactly(
                new Fault("/materials/2/amount", "This is a count, but line 1 takes “Glue” as a volume. Give both alike."));
    }

    @Test
    void namesWhatAWorkingLacks() {
        Sizing knotted = new Sizing("strand", SizingKind.STRAND, Map.of("target", "length", "knots", "1"), STRAND.beads());
        Sizing coil = new Sizing("ring", SizingKind.COIL, Map.of("wire", "1 mm"), null);
        Sizing resin = new Sizing("resin", SizingKind.POUR, Map.of("volume", "5 ml", "volume_a", "2", "weight_b", "1"), null);
        SizedPiece piece = PieceSizer.size(project(List.of(knotted, coil, resin), List.of(), null), SMALL);

        assertThat(piece.faults()).containsExactly(
                new Fault("/sizing/0", "Knots need the diameter of the cord: give a value for “cord”."),
                new Fault("/sizing/1/values/mandrel", "The coil needs a value for “mandrel”."),
                new Fault("/sizing/2", "Give the parts by weight or by volume, not both: the two ratios differ."));
    }

    @Test
    void insistsOnTheKindOfAmountTheMaterialIsCountedIn() {
        Map<String, MaterialSpec> catalogue = Map.of("Resin", material("Resin", Unit.G), "Cord", material("Cord", Unit.M));
        SizedPiece piece = PieceSizer.size(
                project(List.of(), List.of(line("Resin", "length", null), line("Resin", "5 g", "2"), line("Cord", "length", null)), null), SMALL, catalogue);

        assertThat(piece.faults()).containsExactly(
                new Fault("/materials/0/amount", "In “length”: it gives a length, but a mass is needed here."),
                new Fault("/materials/1/pieces", "“Resin” is counted by mass and can't be cut to length. Leave the pieces out."));
        assertThat(piece.lines()).singleElement().extracting(SizedPiece.Line::each).hasToString("0.42 m");
    }

    @Test
    void givesEveryBeadOfThePatternItsCount() {
        Sizing sizing = new Sizing("s", SizingKind.STRAND, Map.of("target", "20 mm", "graduated", "1"),
                List.of(new Bead("end", "4 mm", null), new Bead("centre", "20 mm", null)));
        assertThat(PieceSizer.size(project(List.of(sizing), List.of(), null), SMALL).values())
                .containsEntry("s_end", Quantity.parse("0")).containsEntry("s_centre", Quantity.parse("1"));
    }

    @Test
    void givesEveryPromisedAnswer() {
        List<Sizing> all = List.of(
                new Sizing("b", SizingKind.BRACELET, Map.of("wrist", "165 mm", "ease", "1 cm"), STRAND.beads()),
                new Sizing("c", SizingKind.COIL, Map.of("mandrel", "4 mm", "wire", "0.8 mm", "turns", "12", "density", "8.9 g_per_cm3"), null),
                new Sizing("p", SizingKind.POUR, Map.of("volume", "5 ml", "weight_a", "100", "weight_b", "47",
                        "density_a", "1.1 g_per_cm3", "density_b", "1 g_per_cm3"), null),
                new Sizing("r", SizingKind.SHEET, Map.of("width", "width", "height", "12 cm", "sheet_width", "30 cm", "sheet_height", "20 cm",
                        "thickness", "1 mm", "density", "8.5 g_per_cm3"), null));
        SizedPiece piece = PieceSizer.size(project(all, List.of(), null), SMALL);

        assertThat(piece.faults()).isEmpty();
        assertThat(piece.values().keySet()).contains("b_beads", "b_knots", "b_length", "b_inside", "b_difference", "b_thread",
                "c_turn", "c_length", "c_height", "c_outside", "c_mass", "p_volume", "p_mass", "p_a_mass", "p_b_mass", "p_a_volume",
                "p_b_volume", "r_pieces", "r_area", "r_mass", "r_per_sheet", "r_sheets");
        assertThat(piece.values().get("b_inside")).hasToString("174.867259 mm");
        assertThat(piece.values()).containsEntry("r_per_sheet", Quantity.parse("12"));
    }

    private static ProjectSpec project(List<Sizing> sizing, List<MaterialLine> lines, String repeats) {
        Step step = Step.of("knot", "Knot", StepKind.MAKE).withRepeats(repeats);
        return ProjectSpecBuilder.builder().name("Strand").craft("beads").level(SkillLevel.BEGINNER).sizes(List.of(SMALL))
                .sizing(sizing).materials(lines).steps(List.of(step)).build();
    }

    private static MaterialLine line(String material, String amount, String pieces) {
        return MaterialLine.of(material, amount).withPieces(pieces);
    }

    private static MaterialSpec material(String name, Unit unit) {
        return MaterialSpec.of(name, unit);
    }
}
