package benchful.web.forms.fields;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A currency by its code of ISO 4217. */
@Matching("^[A-Z]{3}$")
@Mend("Give the currency by its three letters, such as GBP.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface CurrencyCode {}
