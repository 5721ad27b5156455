/** Pieces cut from lengths. */
package benchful.core.cutting.lengths;
