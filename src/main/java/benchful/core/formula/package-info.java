/**
 * Arithmetic with units, as a tutor writes it on a material line: {@code 2 * length + 40 cm}.
 * EvalEx reads the expression; its tree is evaluated here so that units are checked at every sign.
 */
@NullMarked
package benchful.core.formula;

import org.jspecify.annotations.NullMarked;
