package benchful.privacy;

import benchful.privacy.StoredRows.Stored;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Removes the students of classes that are long over; how many there were, in which sizes, and what each chose stays. */
@ApplicationScoped
class OldStudents {
    private static final String OVER = """
            select id from craft_class where ends_at < :day
            union select cast(before ->> 'id' as bigint) from bin_row
                where table_name = 'craft_class' and after is null and cast(before ->> 'ends_at' as timestamp) < :day
            order by 1""";

    private final StoredRows stored;
    private final EntityManager database;

    OldStudents(StoredRows stored, EntityManager database) {
        this.stored = stored;
        this.database = database;
    }

    /** How many names, of students and of those to call for them, stand in how many classes. */
    @TemplateData
    record Counted(int names, int classes) {}

    /** Those of classes that ended before a day, in the bin too. */
    @Transactional
    Counted before(LocalDate day) {
        List<Integer> named = over(day).map(id -> students(stored.ofClass(id, false)).size()).filter(n -> n > 0).toList();
        return new Counted(named.stream().mapToInt(Integer::intValue).sum(), named.size());
    }

    @Transactional
    void remove(LocalDate day) {
        over(day).forEach(this::remove);
    }

    private void remove(long classId) {
        List<Stored> rows = stored.ofClass(classId, true);
        Set<String> names = students(rows);
        if (names.isEmpty()) {
            return;
        }
        Redaction redaction = Redaction.ofAll(names);
        rows.forEach(row -> redaction.row(row.table().name(), row.row()));
        rows.forEach(row -> stored.write(row, redaction.row(row.table().name(), row.row())));
    }

    /** The names of the students, and of those to call for them. */
    private static Set<String> students(List<Stored> rows) {
        Redaction reader = Redaction.ofAll(List.of());
        Set<String> names = new TreeSet<>();
        for (Stored row : rows) {
            reader.row(row.table().name(), row.row());
            reader.students().stream().flatMap(s -> Stream.of(s.path("name"), s.path("emergency").path("name")))
                    .map(JsonNode::asText).filter(n -> !n.isBlank()).forEach(names::add);
        }
        return names;
    }

    @SuppressWarnings("unchecked")
    private Stream<Long> over(LocalDate day) {
        return ((List<Long>) database.createNativeQuery(OVER, Long.class).setParameter("day", day.atStartOfDay()).getResultList()).stream();
    }
}
