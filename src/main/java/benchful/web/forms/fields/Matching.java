package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text in which a regular expression is found, as a schema means it; to hold for the whole, it begins with ^ and ends with $. */
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Matching {
    String value();
}
