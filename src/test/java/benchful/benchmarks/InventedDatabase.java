package benchful.benchmarks;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassSetup;
import benchful.plans.materials.TermRequest;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.forms.SpecFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Years of a tutor's work, invented, stored behind the program's back: 1,008 classes of 336 projects, of which 111 are still to
 * come, 5,046 materials of 12 suppliers, some 65,000 movements of stock, 5,000 of them of one material, 400 orders, 60 of them
 * open, 60 rooms and 60 batches of kits for sale.
 */
final class InventedDatabase {
    private static final int CLASSES = 1008;
    private static final int COMING = 111;
    private static final int MATERIALS = 5046;
    private static final int BUSY_MATERIAL = 5000;
    private static final int MOVEMENTS_EACH = 12;
    private static final int ORDERS = 400;
    private static final int OPEN = 60;
    private static final int LINES = 8;
    private static final int ROOMS = 60;
    private static final long SEED = 11;

    private final Connection database;
    private final InventedTerm term = new InventedTerm(SEED, MATERIALS, 12);
    private final List<Step> steps;

    /** @param steps that each project has: those of a sample, which name no material */
    private InventedDatabase(Connection database, List<Step> steps) {
        this.database = database;
        this.steps = steps;
    }

    /** @param data folder of a running program that has made its tables */
    static void fill(Path data, List<Step> steps) throws IOException, SQLException {
        try (Connection database = connect(data)) {
            database.setAutoCommit(false);
            new InventedDatabase(database, steps).fill();
            database.commit();
            database.setAutoCommit(true);
            try (Statement statement = database.createStatement()) {
                statement.execute("vacuum analyze");
            }
        }
    }

    /** One number that the database knows, such as how many classes there are. */
    static long number(Path data, String sql) throws IOException, SQLException {
        try (Connection database = connect(data); Statement statement = database.createStatement(); ResultSet result = statement.executeQuery(sql)) {
            result.next();
            return result.getLong(1);
        }
    }

    private static Connection connect(Path data) throws IOException, SQLException {
        String password = Files.readString(found(data, ".password")).strip();
        String port = Files.readAllLines(found(data, "postmaster.pid")).get(3).strip();
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:%s/benchful".formatted(port), "benchful", password);
    }

    private static Path found(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder, 3)) {
            return all.filter(p -> p.getFileName().toString().endsWith(ending)).findFirst().orElseThrow();
        }
    }

    private void fill() throws SQLException, IOException {
        Map<String, Long> suppliers = new HashMap<>();
        for (SupplierSpec s : term.suppliers()) {
            suppliers.put(s.name(), insert("insert into supplier (version, name, currency, minimum_order, delivery, free_above, lead_days, weekdays, vat, sample)"
                    + " values (0, ?, ?, ?, ?, ?, ?, ?, ?, false)", s.name(), s.currency(), s.minimumOrder(), s.delivery(), s.freeAbove(), s.leadDays(), s.weekdays(), s.vat()));
        }
        for (MaterialSpec m : term.materials()) {
            store(m, suppliers);
        }
        movements();
        classes(term.classes(CLASSES).parts());
        orders();
        run("insert into venue (version, name, sample, sheet) select 0, 'Room ' || n, false, jsonb_build_object('name', 'Room ' || n, 'seats', 12) from generate_series(1, ?) n", ROOMS);
        run("""
                insert into kit_batch (version, project_id, ready_by, sheet)
                select 0, id, current_date + 40, '{"kits": 10, "level": "beginner", "currency": "GBP"}' from project where not sample order by id limit ?""", ROOMS);
    }

    private void orders() throws SQLException {
        run("""
                insert into purchase_order (version, supplier_id, supplier, currency, delivery, vat, lead_days, weekdays, status, note, written_on, sent_on, changed_at)
                select 0, s.id, s.name, s.currency, 4, 20, s.lead_days, s.weekdays, case when n < ? then 'SENT' else 'RECEIVED' end, 'invented', current_date - n, current_date - n, now()
                from generate_series(0, ? - 1) n
                join (select *, row_number() over (order by id) - 1 as place, count(*) over () as all_of_them from supplier where not sample) s on s.place = n % s.all_of_them""", OPEN, ORDERS);
        run("""
                with goods as (select m.id, m.name, f.holds, f.price, row_number() over (order by m.id) - 1 as place, count(*) over () as all_of_them
                    from material m join offer f on f.material_id = m.id and f.position = 0 where not m.sample)
                insert into order_line (order_id, position, material_id, material, packs, holds, price, vat, needed_by, received)
                select o.id, k, g.id, g.name, 3, g.holds, g.price, 20, o.written_on + 30, case when o.status = 'SENT' then 0 else 3 end
                from purchase_order o cross join generate_series(0, ? - 1) k join goods g on g.place = (o.id * 8 + k) % g.all_of_them where o.note = 'invented'""", LINES);
    }

    private void store(MaterialSpec m, Map<String, Long> suppliers) throws SQLException {
        long id = insert("insert into material (version, name, unit, waste_beginner, cut_loss, minimum, hazards, sample) values (0, ?, ?, ?, ?, ?, '{}', false)",
                m.name(), m.unit().symbol(), m.waste().values().iterator().next(), m.cutLoss() == null ? null : m.cutLoss().toString(), m.name().endsWith("7") ? "20 " + m.unit().symbol() : null);
        for (int i = 0; i < m.offers().size(); i++) {
            Offer o = m.offers().get(i);
            long offer = insert("insert into offer (material_id, supplier_id, position, holds, price, priced_on) values (?, ?, ?, ?, ?, current_date - 30)",
                    id, suppliers.get(o.supplier()), i, o.holds().toString(), o.price());
            for (Offer.PriceBreak b : o.breaks()) {
                run("insert into price_break (offer_id, packs, price) values (?, ?, ?)", offer, b.packs(), b.price());
            }
        }
    }

    private void movements() throws SQLException {
        run("""
                insert into stock_movement (material_id, kind, amount, happened_at, note)
                select m.id, case when n % 3 = 0 then 'RECEIVED' else 'USED' end, case when n % 3 = 0 then 100 else -40 end, now() - n * interval '1 day', 'invented'
                from material m, generate_series(0, ? - 1) n where not m.sample""", MOVEMENTS_EACH);
        run("""
                insert into stock_movement (material_id, kind, amount, happened_at, note)
                select (select min(id) from material where not sample), case when n % 2 = 0 then 'RECEIVED' else 'USED' end, case when n % 2 = 0 then 10 else -10 end, now() - n * interval '1 hour', 'invented'
                from generate_series(1, ?) n""", BUSY_MATERIAL);
    }

    private void classes(List<TermRequest.Part> parts) throws SQLException, IOException {
        Map<String, Long> projects = new HashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            ProjectSpec project = parts.get(i).file().project();
            if (!projects.containsKey(project.name())) {
                projects.put(project.name(), insert("insert into project (version, name, craft, level, archived, sample, updated_at, sheet) values (0, ?, ?, 'BEGINNER', false, false, ?, ?::jsonb)",
                        project.name(), project.craft(), Timestamp.from(Instant.now()), json(project.withSteps(steps))));
            }
            store(parts.get(i).file().setup(), projects.get(project.name()), LocalDate.now().plusDays(2L + i - (CLASSES - COMING)));
        }
    }

    private void store(ClassSetup setup, long project, LocalDate day) throws SQLException, IOException {
        ClassSetup.Meeting hours = setup.meetings().get(0);
        ClassSetup moved = ClassSetup.plain(setup.title(), List.of(new ClassSetup.Meeting(day, hours.starts(), hours.starts().plusHours(8))), setup.headcount(),
                setup.level(), setup.sizes(), setup.currency());
        insert("insert into craft_class (project_id, starts_at, ends_at, setup, sample) values (?, ?, ?, ?::jsonb, false)", project,
                Timestamp.valueOf(day.atTime(hours.starts())), Timestamp.valueOf(day.atTime(hours.starts().plusHours(8))), json(moved));
    }

    private static String json(Object sheet) throws IOException {
        return SpecFormat.json().writeValueAsString(sheet);
    }

    private long insert(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = database.prepareStatement(sql + " returning id")) {
            set(statement, values);
            try (ResultSet key = statement.executeQuery()) {
                key.next();
                return key.getLong(1);
            }
        }
    }

    private void run(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = database.prepareStatement(sql)) {
            set(statement, values);
            statement.executeUpdate();
        }
    }

    private static void set(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
    }
}
