package benchful.web.forms;

import io.quarkus.hibernate.orm.JsonFormat;
import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import java.lang.reflect.ParameterizedType;
import org.hibernate.type.descriptor.WrapperOptions;
import org.hibernate.type.descriptor.java.JavaType;
import org.hibernate.type.format.FormatMapper;
import org.hibernate.type.format.jackson.JacksonJsonFormatMapper;

/**
 * Sheets in {@code jsonb} columns, written as in files. An entity holds one as
 * {@code @JdbcTypeCode(SqlTypes.JSON) @Mutability(Immutability.class) Stored<Sheet>}.
 */
@JsonFormat
@PersistenceUnitExtension
@ApplicationScoped
public class StoredSpecs implements FormatMapper {
    private final FormatMapper json = new JacksonJsonFormatMapper(SpecFormat.json());

    @Override
    public <T> T fromString(CharSequence stored, JavaType<T> type, WrapperOptions options) {
        if (type.getJavaType() instanceof ParameterizedType held && held.getRawType() == Stored.class) {
            return type.getJavaTypeClass().cast(Stored.written(stored.toString(), held.getActualTypeArguments()[0]));
        }
        return json.fromString(stored, type, options);
    }

    @Override
    public <T> String toString(T value, JavaType<T> type, WrapperOptions options) {
        return value instanceof Stored<?> sheet ? sheet.text() : json.toString(value, type, options);
    }
}
