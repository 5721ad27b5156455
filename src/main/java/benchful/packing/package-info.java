/**
 * What a class takes from the shelf: its needs reserved ahead, and its kits packed and ticked off one by one.
 * Each tick moves stock once; taking it back puts the same amount back.
 */
package benchful.packing;
