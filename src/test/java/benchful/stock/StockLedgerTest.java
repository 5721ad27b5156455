package benchful.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.SampleData;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class StockLedgerTest {
    private static final List<MovementKind> SIGNED =
            List.of(MovementKind.RECEIVED, MovementKind.PACKED, MovementKind.USED, MovementKind.SPOILT, MovementKind.RETURNED);

    @Inject StockLedger ledger;

    @Inject SampleData data;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void keepsTheBalanceTheExactSumOfWhatWasWrittenDown(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long id = material("Sum " + seed);
        BigDecimal expected = BigDecimal.ZERO;
        for (int i = 0; i < 40; i++) {
            Quantity amount = new Quantity(BigDecimal.valueOf(random.nextLong(1, 100_000), 3), random.nextBoolean() ? Unit.M : Unit.INCH);
            if (random.nextInt(8) == 0) {
                ledger.count(id, amount, Cause.NONE);
                expected = amount.in(Unit.MM).amount();
            } else {
                MovementKind kind = SIGNED.get(random.nextInt(SIGNED.size()));
                Balance after = ledger.move(id, kind, amount, Cause.NONE);
                expected = expected.add(amount.in(Unit.MM).amount().multiply(BigDecimal.valueOf(kind.sign())));
                assertThat(after.negative()).isEqualTo(expected.signum() < 0);
            }
            assertThat(ledger.balance(id).onHand().in(Unit.MM).amount()).isEqualByComparingTo(expected);
        }
    }

    @Test
    void losesNothingWhenManyReceiveAndPackAtOnce() throws Exception {
        long id = material("Crowd");
        List<Callable<BigDecimal>> people = new ArrayList<>();
        for (int person = 0; person < 16; person++) {
            long seed = person;
            people.add(() -> movesAtRandom(id, seed));
        }
        BigDecimal written = sum(people);
        assertThat(ledger.balance(id).onHand().in(Unit.MM).amount()).isEqualByComparingTo(written);
    }

    @Test
    void meetsEachCountExactlyWhileOthersReceive() throws Exception {
        long id = material("Count in a crowd");
        List<Callable<BigDecimal>> people = new ArrayList<>();
        for (int person = 0; person < 8; person++) {
            people.add(() -> ledger.count(id, Quantity.parse("7 m"), Cause.NONE).onHand().in(Unit.MM).amount());
            people.add(() -> ledger.move(id, MovementKind.RECEIVED, Quantity.parse("1 m"), Cause.NONE).onHand().in(Unit.MM).amount());
        }
        ExecutorService crowd = Executors.newFixedThreadPool(people.size());
        List<BigDecimal> seen = new ArrayList<>();
        for (Future<BigDecimal> f : crowd.invokeAll(people)) {
            seen.add(f.get());
        }
        crowd.shutdown();
        for (int i = 0; i < seen.size(); i += 2) {
            assertThat(seen.get(i)).isEqualByComparingTo("7000");
        }
        BigDecimal end = ledger.balance(id).onHand().in(Unit.MM).amount();
        assertThat(end).isBetween(new BigDecimal("7000"), new BigDecimal("15000"));
        assertThat(end.remainder(new BigDecimal("1000"))).isEqualByComparingTo("0");
    }

    @Test
    void reservesForAClassWhatItWantsAndReleasesTheRest() {
        data.onlySamples();
        long strand = data.classTitled("Knotted strand, Saturday");
        long wires = data.classTitled("Coiled");
        long cord = material("Promised cord");
        long wire = material("Promised wire");
        ledger.move(cord, MovementKind.RECEIVED, Quantity.parse("10 m"), Cause.NONE);
        ledger.reserve(strand, Map.of("promised CORD", Quantity.parse("4 m"), "Promised wire", Quantity.parse("1 m"), "not there", Quantity.parse("1 m")), null);
        ledger.reserve(wires, Map.of("Promised cord", Quantity.parse("1 m")), null);
        assertThat(ledger.balance(cord)).isEqualTo(new Balance(Quantity.parse("10 m"), Quantity.parse("5 m")));
        assertThat(ledger.balance(wire).free()).isEqualTo(Quantity.parse("0 m").minus(Quantity.parse("1 m")));

        ledger.reserve(strand, Map.of("Promised cord", Quantity.parse("3 m")), null);
        assertThat(ledger.balance(cord).free()).isEqualTo(Quantity.parse("6 m"));
        assertThat(ledger.balance(wire).free()).isEqualTo(Quantity.zero(Unit.M));
        assertThat(ledger.reserved(strand)).containsOnlyKeys(cord);

        ledger.reserve(strand, Map.of(), null);
        assertThat(ledger.balance(cord)).isEqualTo(new Balance(Quantity.parse("10 m"), Quantity.parse("9 m")));
    }

    @Test
    void usesUpAReservationExactlyOnceWhileManyPackAndReceive() throws Exception {
        data.onlySamples();
        long strand = data.classTitled("Knotted strand, Saturday");
        long id = material("Promised in a crowd");
        ledger.move(id, MovementKind.RECEIVED, Quantity.parse("10 m"), Cause.NONE);
        ledger.reserve(strand, Map.of("Promised in a crowd", Quantity.parse("10 m")), null);
        List<Callable<BigDecimal>> people = new ArrayList<>();
        for (int person = 0; person < 12; person++) {
            people.add(() -> ledger.pack(id, strand, Quantity.parse("1.25 m"), null));
            people.add(() -> ledger.move(id, MovementKind.RECEIVED, Quantity.parse("1 m"), Cause.NONE).onHand().times(0).amount());
        }
        assertThat(sum(people)).as("released by packing [mm]").isEqualByComparingTo("10000");
        assertThat(ledger.reserved(strand)).isEmpty();
        assertThat(ledger.balance(id)).isEqualTo(new Balance(Quantity.parse("7 m"), Quantity.parse("7 m")));
    }

    @Test
    void warnsOfEachTakingThatLeavesLessThanNothingAlsoInACrowd() throws Exception {
        long id = material("Too little in a crowd");
        ledger.move(id, MovementKind.RECEIVED, Quantity.parse("5 m"), Cause.NONE);
        List<Callable<BigDecimal>> people = new ArrayList<>();
        for (int person = 0; person < 12; person++) {
            people.add(() -> ledger.move(id, MovementKind.USED, Quantity.parse("1 m"), Cause.NONE).negative() ? BigDecimal.ONE : BigDecimal.ZERO);
        }
        assertThat(sum(people)).as("5 of 12 find their metre").isEqualByComparingTo("7");
        assertThat(ledger.balance(id).negative()).isTrue();
    }

    @Test
    void refusesAnAmountOfAnotherKind() {
        long id = material("Weighed");
        assertThatThrownBy(() -> ledger.move(id, MovementKind.RECEIVED, Quantity.parse("5 g"), Cause.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("5 g is a mass and can't be given in mm");
    }

    private BigDecimal movesAtRandom(long id, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < 12; i++) {
            MovementKind kind = SIGNED.get(random.nextInt(SIGNED.size()));
            Quantity amount = new Quantity(BigDecimal.valueOf(random.nextLong(1, 10_000), 1), Unit.MM);
            ledger.move(id, kind, amount, Cause.NONE);
            sum = sum.add(amount.amount().multiply(BigDecimal.valueOf(kind.sign())));
        }
        return sum;
    }

    private static BigDecimal sum(List<Callable<BigDecimal>> people) throws Exception {
        ExecutorService crowd = Executors.newFixedThreadPool(people.size());
        BigDecimal sum = BigDecimal.ZERO;
        for (Future<BigDecimal> f : crowd.invokeAll(people)) {
            sum = sum.add(f.get());
        }
        crowd.shutdown();
        return sum;
    }

    private static long material(String name) {
        MaterialSpec sheet = MaterialSpec.of(name, Unit.M);
        return QuarkusTransaction.requiringNew().call(() -> {
            Material stored = Material.stored(sheet, n -> null, false, LocalDate.of(2027, 3, 6));
            Material.flush();
            return stored.id();
        });
    }
}
