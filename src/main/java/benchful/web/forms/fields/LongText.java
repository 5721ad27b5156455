package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text of many lines, in Markdown where it is printed. */
@Length(most = 10_000)
@Mend("Write at most 10,000 characters.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface LongText {}
