package benchful.privacy;

import benchful.privacy.StoredRows.Stored;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds one person by name in all that is stored, and erases them there. */
@ApplicationScoped
class People {
    private final StoredRows stored;

    People(StoredRows stored) {
        this.stored = stored;
    }

    /**
     * Where a person is named.
     *
     * @param texts in which the name is written
     * @param students what is written about the person as a student
     */
    @TemplateData
    record Mention(Place place, List<String> texts, List<JsonNode> students) {
        private static final int MOST = 3;
        private static final int LONGEST = 200;

        /** A few of the texts, shortened. */
        public List<String> shown() {
            return texts.stream().limit(MOST).map(t -> t.length() > LONGEST ? t.substring(0, LONGEST) + "…" : t).toList();
        }
    }

    /** @param things where the name is a part of a thing's own name, which is not erased */
    @TemplateData
    record Findings(List<Mention> mentions, List<Mention> things) {
        public boolean nothing() {
            return mentions.isEmpty() && things.isEmpty();
        }
    }

    @Transactional
    Findings find(String name) {
        Redaction redaction = Redaction.of(name);
        List<Mention> mentions = new ArrayList<>();
        List<Mention> things = new ArrayList<>();
        for (Stored row : stored.holding(letters(name), false)) {
            Place place = Place.of(row.table().name(), row.row());
            if (!redaction.row(row.table().name(), row.row()).equals(row.row())) {
                mentions.add(new Mention(place, redaction.texts(), redaction.students()));
            }
            if (!redaction.things().isEmpty()) {
                things.add(new Mention(place, redaction.things().stream().distinct().toList(), List.of()));
            }
        }
        return new Findings(mentions, things.stream().distinct().toList());
    }

    /** In one go, or not at all. */
    @Transactional
    void erase(String name) {
        Redaction redaction = Redaction.of(name);
        String letters = letters(name);
        // Classes say under which number their students stand from now on, before packing lists are met.
        stored.holding(letters, false).forEach(row -> redaction.row(row.table().name(), row.row()));
        for (Stored row : stored.holding(letters, true)) {
            stored.write(row, redaction.row(row.table().name(), row.row()));
        }
    }

    /** The longest run of letters in the name that every database folds alike; the rest is compared here. */
    private static String letters(String name) {
        return Arrays.stream(name.split("[^A-Za-z0-9]+")).max(Comparator.comparing(String::length)).orElse("");
    }
}
