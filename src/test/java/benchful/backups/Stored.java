package benchful.backups;

import benchful.SampleData;
import benchful.backups.tables.Snapshot;
import benchful.database.TableMap.Table;
import benchful.web.Visitor;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.net.URL;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What lies in the database, for tests: filled with something of every kind, and compared whole. */
@ApplicationScoped
public class Stored {
    /** What no page of the samples has led to. */
    private static final String[] REST = {
        "insert into hazard (id, version, sheet) values ('grinding-dust', 3, '{\"name\": \"Grinding dust\", \"note\": \"=1+1, \\\"quoted\\\"\"}')",
        "insert into offcut (material_id, length, from_class, kept_at) select min(id), '17.25 cm', 1, '2026-11-01 10:00:00.123456+00' from material",
        "insert into cut_material (class_id, material_id, sizes, cut_at) select (select min(id) from craft_class), min(id), '[1.50, []]', now() from material",
        "insert into past_price select min(id), 1.10, '2025-01-01', '2025-06-01' from offer",
        "insert into printed_assessment (class_id, printed_at, sheet) select min(id), '2026-11-01 10:00', '{}' from craft_class",
        "insert into assessment (version, class_id, sheet) select 0, min(id), '{\"notes\": \"line\\nline\"}' from craft_class",
        "insert into class_photo (class_id, caption, media_type, content) select min(id), 'Six strands', 'image/png', '\\x89504e470d0a1a0a00ff' from craft_class",
        "insert into bin_entry (kind, name, address, removed_at) values ('venue', 'Old loft', '/venues/9', now())",
        "insert into bin_row (entry_id, table_name, before) select id, 'venue', '{\"id\": 9, \"name\": \"Old loft\"}' from bin_entry",
        "update supplier set contact = e'Ask for \"Ninepin\", mornings\\nthen ring; ÅÉ 珠' where id = (select min(id) from supplier)",
        "update material set note = '' where id = (select max(id) from material)",
        "update material set hazards = '{\"a,b\",\"c\"}' where id = (select min(id) from material)",
    };

    private final SampleData data;
    private final AgroalDataSource database;
    private final Folders folders;

    Stored(SampleData data, AgroalDataSource database, Folders folders) {
        this.data = data;
        this.database = database;
        this.folders = folders;
    }

    /** The samples with orders, a batch, packed kits and whatever else has a table. */
    public void fill(URL address) throws SQLException {
        data.onlySamples();
        execute("delete from hazard");
        emptyFolder();
        Visitor tutor = new Visitor(address);
        tutor.open("/orders/new").press("Write these orders");
        tutor.open(tutor.open("/batches/new").page().selectFirst("main a[href^=/batches/new?]").attr("href")).type("/kits", "6").press("Save");
        tutor.open("/classes/" + data.classTitled("Knotted strand, Saturday") + "/packing");
        tutor.press(tutor.page().selectFirst("button[name=whole]"));
        execute(REST);
    }

    /** Of backups, in the data folder of the tests. */
    private void emptyFolder() {
        BackupFolder folder = folders.of(ScheduleSpec.standard());
        folder.files().forEach(f -> folder.remove(f.name(), f.bytes()));
    }

    void nothing() throws SQLException {
        data.nothing();
        execute("delete from hazard");
    }

    void execute(String... commands) throws SQLException {
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement()) {
            for (String command : commands) {
                statement.execute(command);
            }
        }
    }

    public List<String> texts(String query) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Connection connection = database.getConnection(); Statement statement = connection.createStatement(); ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                texts.add(rows.getString(1));
            }
        }
        return texts;
    }

    /** A fingerprint of each table with its number of rows and the number its next row gets. */
    Map<String, String> everything() throws SQLException {
        Map<String, String> all = new TreeMap<>();
        try (Connection connection = database.getConnection()) {
            Snapshot snapshot = Snapshot.taken(connection, "public");
            for (Table table : snapshot.tables()) {
                all.put(table.name(), "%d rows, next %s, %s".formatted(snapshot.rows(table), snapshot.next(table), snapshot.sha256(table)));
            }
            connection.rollback();
        }
        return all;
    }
}
