/** Rectangles cut from sheets by straight cuts from edge to edge. */
package benchful.core.cutting.sheets;
