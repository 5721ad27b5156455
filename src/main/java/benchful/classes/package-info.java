/**
 * Classes: one planned teaching of a project to a group, on its date, in its venue.
 * Its page reads from top to bottom as the tutor works: will it fit, what to buy, pack, print, run and review.
 */
package benchful.classes;
