/** Rectangles cut from sheets by straight cuts from edge to edge. */
@NullMarked
package benchful.core.cutting.sheets;

import org.jspecify.annotations.NullMarked;
