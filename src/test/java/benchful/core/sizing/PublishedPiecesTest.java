package benchful.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.RingSize;
import benchful.core.quantity.Unit;
import benchful.core.quantity.WireGauge;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Pieces worked out as others have published them. */
class PublishedPiecesTest {
    private static final Quantity NONE = Quantity.zero(Unit.MM);

    @ParameterizedTest
    @CsvFileSource(resources = "/published/beads-per-strand.csv", useHeadersInDisplayName = true)
    void reproducesBeadsOnAStrand(String inches, String bead, int beads) {
        Strand strand = StrandSizer.size(StrandRequest.byLength(Quantity.parse(inches + " in"), NONE,
                List.of(new BeadRun("round", Quantity.parse(bead + " mm"), 1)), Arrangement.REPEATED, Knots.none(), null));
        assertThat(strand.beads().size()).isBetween(beads, beads + 3);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/copper-wire-mass.csv", useHeadersInDisplayName = true)
    void reproducesTheMassOfCopperWire(int awg, BigDecimal pounds) {
        Quantity mass = CoilSizer.mass(Quantity.parse("1000 ft"), WireGauge.american(awg), Quantity.parse("8.89 g_per_cm3"));
        assertThat(mass.in(Unit.POUND).amount()).isCloseTo(pounds, within(pounds.multiply(new BigDecimal("0.002"))));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ring-blanks.csv", useHeadersInDisplayName = true)
    void reproducesTheBlankOfARing(BigDecimal us, BigDecimal thickness, BigDecimal blank) {
        Quantity inside = Quantity.ofBase(RingSize.american(us).base().divide(Quantity.PI, Quantity.PRECISION), Unit.MM);
        Coil coil = CoilSizer.size(new CoilRequest(inside, new Quantity(thickness, Unit.MM), BigDecimal.ONE, NONE, null));
        assertThat(coil.turn().base()).isCloseTo(blank, within(new BigDecimal("0.4")));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/pours.csv", useHeadersInDisplayName = true)
    void reproducesPours(String example, BigDecimal ml, String by, BigDecimal a, BigDecimal b, BigDecimal density, BigDecimal densityA,
            BigDecimal densityB, BigDecimal mass, BigDecimal massA, BigDecimal massB) {
        Mix mix = by == null ? null : new Mix(by.equals("weight") ? Mix.By.WEIGHT : Mix.By.VOLUME, a, b);
        Pour pour = PourSizer.size(new PourRequest(new Quantity(ml, Unit.ML), density(density), mix, density(densityA), density(densityB)));

        assertThat(pour.mass().base()).isCloseTo(mass, within(new BigDecimal("0.01")));
        if (mix != null) {
            assertThat(pour.a().mass().base()).isCloseTo(massA, within(new BigDecimal("0.01")));
            assertThat(pour.b().mass().base()).isCloseTo(massB, within(new BigDecimal("0.01")));
        }
    }

    private static Quantity density(BigDecimal gramsPerCubicCentimetre) {
        return gramsPerCubicCentimetre == null ? null : new Quantity(gramsPerCubicCentimetre, Unit.G_PER_CM3);
    }
}
