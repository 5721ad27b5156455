/** The cutting problem in whole numbers that lengths and sheets share: kinds, patterns, bounds, and the integer programme that proves a plan. */
@NullMarked
package benchful.core.cutting.patterns;

import org.jspecify.annotations.NullMarked;
