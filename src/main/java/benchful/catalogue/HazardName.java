package benchful.catalogue;

import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The short name by which materials, tools and steps carry a hazard. */
@Matching("^[a-z0-9][a-z0-9-]{0,59}$")
@Mend("Name a hazard of the hazard library by its short name, such as “sharp-tools”.")
@Target(ElementType.TYPE_USE)
@Retention(RetentionPolicy.RUNTIME)
public @interface HazardName {}
