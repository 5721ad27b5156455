package benchful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.core.quantity.Quantity;
import benchful.stock.Cause;
import benchful.stock.MovementKind;
import benchful.stock.StockLedger;
import benchful.web.StoredEntity;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is reserved, cut, packed and put back for a class in whatever order: once all of it is undone, the shelf is as it was. */
@QuarkusTest
class ShelfSequencesTest {
    private static final int ACTIONS = 14;

    @Inject SampleData data;

    @Inject Reservation reservation;

    @Inject CuttingWork cutting;

    @Inject Packer packer;

    @Inject StockLedger ledger;

    private long first;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void leavesTheShelfAsItWasOnceAllIsUndone(long seed) {
        data.onlySamples();
        first = data.classTitled("First metal, a bookmark in a day");
        receive("brass sheet 0.8 mm", "3 sheets 300 x 100 mm");
        receive("leather thong 2 mm, black", "5 m");
        Map<String, String> before = shelf();
        Random random = new Random(seed);
        for (int i = 0; i < ACTIONS; i++) {
            act(random);
            assertThat(ledger.reserved(first).values()).as("after action %d", i).allSatisfy(held -> assertThat(held).isGreaterThan(BigDecimal.ZERO));
        }
        assertThat(shelf()).isNotEqualTo(before);

        with(c -> packer.change(c, packer.list(c).boxes().stream().map(b -> BoxChange.of(b.key(), List.of(), b.items().stream().map(Box.Item::material).toList())).toList()));
        with(c -> ledger.leftOver(first).keySet().forEach(m -> ledger.leave(m, first, Quantity.zero(Material.<Material>findById(m).unit()), "none after all")));
        with(c -> cutting.rows(c).forEach(r -> assertThat(cutting.takeBack(c, r.materialId())).isTrue()));
        with(reservation::release);
        assertThat(shelf()).isEqualTo(before);
        assertThat(ledger.reserved(first)).isEmpty();
    }

    private void act(Random random) {
        switch (random.nextInt(7)) {
            case 0 -> with(reservation::reserve);
            case 1 -> with(reservation::release);
            case 2 -> with(c -> {
                CuttingRow row = any(cutting.rows(c), random);
                assertThat(cutting.cut(c, row.materialId(), row.seen())).isTrue();
            });
            case 3 -> with(c -> cutting.takeBack(c, any(cutting.rows(c), random).materialId()));
            case 4 -> with(c -> packer.change(c, List.of(BoxChange.whole(any(packer.list(c).boxes(), random).key()))));
            case 5 -> with(c -> ledger.packed(first).forEach((m, packed) -> ledger.leave(m, first, Material.<Material>findById(m).shown(packed).times(BigDecimal.valueOf(random.nextDouble())), "left")));
            default -> with(c -> {
                Box box = any(packer.list(c).boxes(), random);
                packer.change(c, List.of(BoxChange.of(box.key(), List.of(), box.items().stream().map(Box.Item::material).toList())));
            });
        }
    }

    private static <T> T any(List<T> these, Random random) {
        return these.get(random.nextInt(these.size()));
    }

    private void with(Consumer<CraftClass> work) {
        QuarkusTransaction.requiringNew().run(() -> work.accept(StoredEntity.toChange(CraftClass.class, first).orElseThrow()));
    }

    private void receive(String material, String amount) {
        QuarkusTransaction.requiringNew().run(() -> ledger.move(Material.byName(material).orElseThrow().id(), MovementKind.RECEIVED, Quantity.parse(amount), Cause.NONE));
    }

    /** On the shelf and free, by material. */
    private static Map<String, String> shelf() {
        return QuarkusTransaction.requiringNew().call(() -> Material.all().stream()
                .collect(Collectors.toMap(Material::name, m -> m.onHand() + ", free " + m.free(), (a, b) -> a, TreeMap::new)));
    }
}
