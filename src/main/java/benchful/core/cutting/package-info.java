/**
 * Cutting plans: which stock length or sheet is cut into which pieces, with what each cut loses.
 * Lengths are worked with as whole micrometres, pieces rounded up and stock down, so a plan is always exact.
 */
@NullMarked
package benchful.core.cutting;

import org.jspecify.annotations.NullMarked;
