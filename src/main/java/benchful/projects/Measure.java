package benchful.projects;

import benchful.core.quantity.Unit;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;

/**
 * A named number that sizes give and formulas use.
 *
 * @param name as formulas write it: {@code length}
 * @param label as a tutor reads it: "Finished length"
 * @param unit the unit it is shown and typed in
 */
public record Measure(
        @Required @FormulaName String name,
        @Required @Length(least = 1, most = 80) @Mend("Say in words what is measured, such as “Finished length”.") String label,
        @Required Unit unit) {}
