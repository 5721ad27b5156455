package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A record that is entered and stored whole, and whose schema is published. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Spec {
    /** Its schema's name, with its version: {@code venue-1} is served as {@code /schema/venue-1.json}. */
    String name();

    String title();

    /** What a file of this kind is called: "a venue file". Empty where it is only part of a file, or of a form. */
    String file() default "";
}
