/**
 * Amounts with their units: what every engine counts, cuts, weighs and pours in.
 * Exact decimals throughout; conversions use the legal definitions of the units.
 */
@NullMarked
package benchful.core.quantity;

import org.jspecify.annotations.NullMarked;
