/** Pieces cut from lengths. */
@NullMarked
package benchful.core.cutting.lengths;

import org.jspecify.annotations.NullMarked;
