package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The sentence that tells a person how to put a value right. It stands at a field, or at the type of many fields; the one at
 * the field is shown. An annotation that carries it is a word for what many fields hold, such as {@link Line}.
 */
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Mend {
    String value();
}
