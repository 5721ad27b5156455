package benchful.projects;

import benchful.core.quantity.Unit;

/**
 * A named number that sizes give and formulas use.
 *
 * @param name as formulas write it: {@code length}
 * @param label as a tutor reads it: "Finished length"
 * @param unit the unit it is shown and typed in
 */
public record Measure(String name, String label, Unit unit) {}
