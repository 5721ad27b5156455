package benchful.projects;

import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A name that formulas can use. */
@Matching("^[a-z][a-z0-9_]{0,39}$")
@Mend("Use a short name of small letters, digits and _, such as “length”, so that formulas can use it.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
@interface FormulaName {}
