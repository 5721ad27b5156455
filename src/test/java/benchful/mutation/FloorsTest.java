package benchful.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FloorsTest {
    private static final Floors FLOORS = new Floors(Map.of("a.low", 50), Map.of("a.high.One go MathMutator", 1));

    @Test
    void leavesOutAsManyAsMakeNoDifference() {
        List<Mutant> mutants = List.of(mutant("a.high.One", true), mutant("a.high.One", false), mutant("a.high.One", false), mutant("a.high.Two", false));
        assertThat(FLOORS.unnoticed(mutants)).containsExactly(mutants.get(2), mutants.get(3));
        assertThat(FLOORS.shares(mutants)).containsExactly(new Floors.Share("a.high", 1, 3, 85));
    }

    @Test
    void holdsEachPackageToItsOwnFloor() {
        assertThat(FLOORS.shares(List.of(mutant("a.low.One", true), mutant("a.low.One", false)))).containsExactly(new Floors.Share("a.low", 1, 2, 50));
        assertThat(new Floors.Share("a", 17, 20, 85).reached()).isTrue();
        assertThat(new Floors.Share("a", 169, 200, 85).reached()).isFalse();
    }

    private static Mutant mutant(String type, boolean noticed) {
        return new Mutant(type, "go", 1, "MathMutator", "Replaced addition with subtraction", noticed);
    }
}
