package benchful.projects;

import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Mend;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** An amount that is worked out, as it is typed. */
@Filled(500)
@Mend("Give an amount or an expression, such as 2 * length + 40 cm.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
@interface FormulaText {}
