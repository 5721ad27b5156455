package benchful.database;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.database.TableMap.Link;
import benchful.database.TableMap.Table;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class TableMapTest {
    @Inject
    AgroalDataSource database;

    private List<Table> tables;

    @BeforeEach
    void read() throws SQLException {
        try (Connection connection = database.getConnection()) {
            tables = TableMap.of(connection, "public").tables();
        }
    }

    @Test
    void namesEachTableAfterThoseThatItsForeignKeysName() {
        List<String> names = tables.stream().map(Table::name).toList();
        assertThat(names).contains("project", "hazard", "stock_movement").doesNotContain("flyway_schema_history", "form_secret", "sent_form");
        tables.forEach(t -> t.links().forEach(l -> assertThat(names.indexOf(l.target())).as("%s before %s", l.target(), t.name())
                .isLessThanOrEqualTo(names.indexOf(t.name()))));
    }

    @Test
    void knowsKeysNumbersAndLinks() {
        Table breaks = table("price_break");
        assertThat(breaks.key()).containsExactly("offer_id", "packs");
        assertThat(breaks.numbered()).isEmpty();
        assertThat(breaks.links()).containsExactly(new Link(List.of("offer_id"), "offer", List.of("id")));
        assertThat(table("project").numbered()).contains("id");
        assertThat(table("project").columns()).extracting(TableMap.Column::type).contains("jsonb", "timestamp with time zone");
    }

    private Table table(String name) {
        return tables.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }
}
