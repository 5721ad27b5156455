/**
 * On the day: the page that a class is run by, on a phone or tablet, with a network or without one. What is tapped is a log that is
 * only ever added to; how far the class is follows from it ({@code core.day}). The plan is kept when the class begins.
 */
package benchful.day;
