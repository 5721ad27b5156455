package benchful;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import benchful.web.forms.Stored;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.persistence.Entity;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.boot.model.naming.Identifier;
import org.hibernate.boot.model.naming.PhysicalNamingStrategySnakeCaseImpl;
import org.hibernate.type.SqlTypes;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is kept in the database as JSON can always be read back: whole, with every list empty, with any key missing, and as
 * earlier versions of the program stored it. A new column joins by itself, and needs its file in {@code recorded/stored}.
 */
class StoredShapesTest {

    /** All columns of all entities that hold JSON of one shape; an earlier version holds what another column held. */
    static Stream<Field> columns() {
        return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("benchful").stream()
                .filter(type -> type.isAnnotatedWith(Entity.class)).flatMap(type -> type.getFields().stream()).map(JavaField::reflect)
                .filter(field -> field.isAnnotationPresent(JdbcTypeCode.class) && field.getAnnotation(JdbcTypeCode.class).value() == SqlTypes.JSON)
                .filter(field -> field.getType() != JsonNode.class);
    }

    @ParameterizedTest
    @MethodSource("columns")
    void comesBackAsItWasKept(Field column) throws IOException {
        assertThat(kept(column, Specimens.full(sheet(column)))).as("full").isEqualTo(Specimens.full(sheet(column)));
        assertThat(kept(column, Specimens.empty(sheet(column)))).as("empty lists").isEqualTo(Specimens.empty(sheet(column)));
    }

    @ParameterizedTest
    @MethodSource("columns")
    void isReadThoughAnyKeyIsMissing(Field column) throws IOException {
        JsonNode full = SpecFormat.json().valueToTree(Specimens.full(sheet(column)));
        for (String place : places("", full)) {
            JsonNode shorter = full.deepCopy();
            ((ObjectNode) shorter.at(place.substring(0, place.lastIndexOf('/')))).remove(place.substring(place.lastIndexOf('/') + 1));
            Object read = SpecFormat.json().readerFor(type(column)).readValue(shorter);
            assertThat(kept(column, read)).as("without %s", place).isEqualTo(read);
        }
    }

    @ParameterizedTest
    @MethodSource("columns")
    void isReadAsItWasStoredBefore(Field column) throws IOException {
        JsonNode before = SpecFormat.json().readTree(recorded(column));
        Object read = SpecFormat.json().readerFor(type(column)).readValue(before);
        assertThat(lost("", before, SpecFormat.json().valueToTree(read))).isEmpty();
        assertThat(kept(column, read)).isEqualTo(read);
    }

    private static Object kept(Field column, Object value) throws IOException {
        return SpecFormat.json().readerFor(type(column)).readValue(SpecFormat.json().writeValueAsString(value));
    }

    /** The record that a column holds, whether it is read at once or when it is asked for. */
    private static Type sheet(Field column) {
        Type held = column.getGenericType();
        return column.getType() == Stored.class ? ((ParameterizedType) held).getActualTypeArguments()[0] : held;
    }

    private static JavaType type(Field column) {
        return SpecFormat.json().constructType(sheet(column));
    }

    /** The places below a node, a rectangle's two edges left out: there is none without them. */
    private static List<String> places(String at, JsonNode node) {
        List<String> places = new ArrayList<>();
        if (node.isObject() && !at.endsWith("/sheet")) {
            node.fieldNames().forEachRemaining(key -> places.add(at + "/" + key));
            node.fieldNames().forEachRemaining(key -> places.addAll(places(at + "/" + key, node.get(key))));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            places.addAll(places(at + "/" + i, node.get(i)));
        }
        return places;
    }

    /** What was called otherwise once. */
    private static JsonNode now(JsonNode now, String key) {
        return key.equals("picture") ? now.path("pictures").path(0) : now.path(key);
    }

    /** The places whose text is another, or nowhere any more. */
    private static List<String> lost(String at, JsonNode before, JsonNode now) {
        List<String> lost = new ArrayList<>();
        if (!before.isContainerNode() && !before.asText().equals(now.asText())) {
            lost.add("%s: %s, now %s".formatted(at, before, now));
        }
        before.fieldNames().forEachRemaining(key -> lost.addAll(lost(at + "/" + key, before.get(key), now(now, key))));
        for (int i = 0; before.isArray() && i < before.size(); i++) {
            lost.addAll(lost(at + "/" + i, before.get(i), now.path(i)));
        }
        return lost;
    }

    private static byte[] recorded(Field column) throws IOException {
        String file = "/recorded/stored/%s.%s.json".formatted(snake(column.getDeclaringClass().getSimpleName()), snake(column.getName()));
        try (InputStream in = StoredShapesTest.class.getResourceAsStream(file)) {
            assertThat(in).as("src/test/resources%s: one value of this column, as a database holds it", file).isNotNull();
            return in.readAllBytes();
        }
    }

    private static String snake(String name) {
        return new PhysicalNamingStrategySnakeCaseImpl().toPhysicalTableName(Identifier.toIdentifier(name), null).getText();
    }
}
