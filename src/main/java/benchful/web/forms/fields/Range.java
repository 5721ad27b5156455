package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The bounds of a number; one that is not given does not bind. */
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Range {
    long from() default Long.MIN_VALUE;

    long to() default Long.MAX_VALUE;

    /** The number is greater, and may come as close as it likes. */
    long above() default Long.MIN_VALUE;

    /** The number is smaller, and may come as close as it likes. */
    long below() default Long.MAX_VALUE;
}
