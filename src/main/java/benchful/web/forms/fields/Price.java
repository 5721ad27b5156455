package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** An amount of money, in the currency of what it belongs to. */
@Range(from = 0, to = 1_000_000)
@Mend("Give a price from 0 to 1,000,000, such as 4.50.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Price {}
