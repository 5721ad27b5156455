package benchful;

import benchful.database.TableMap;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** All that is stored, row by row and column by column, so that two moments can be compared. */
@ApplicationScoped
public class Everything {
    private final AgroalDataSource database;

    Everything(AgroalDataSource database) {
        this.database = database;
    }

    /** By table, its rows as text in a steady order; tables whose name is left out are not read. */
    public Map<String, List<String>> rows(String... leftOut) {
        try (Connection connection = database.getConnection()) {
            Map<String, List<String>> all = new TreeMap<>();
            for (TableMap.Table table : TableMap.of(connection, connection.getSchema()).tables()) {
                if (!Arrays.asList(leftOut).contains(table.name())) {
                    all.put(table.name(), rows(connection, table.name()));
                }
            }
            return all;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> rows(Connection connection, String table) throws SQLException {
        try (Statement s = connection.createStatement(); ResultSet rows = s.executeQuery("select to_jsonb(t)::text from \"%s\" t order by 1".formatted(table))) {
            List<String> found = new ArrayList<>();
            while (rows.next()) {
                found.add(rows.getString(1));
            }
            return found;
        }
    }

    /** The rows that hold a text, whatever the case of its letters, each after its table's name. */
    public List<String> holding(String text) {
        return rows().entrySet().stream().flatMap(t -> t.getValue().stream().filter(r -> r.toLowerCase().contains(text.toLowerCase())).map(r -> t.getKey() + " " + r))
                .collect(Collectors.toList());
    }
}
