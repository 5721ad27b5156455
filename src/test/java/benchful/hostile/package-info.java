/**
 * Files made to break whoever opens them, and what is asked of the program with each: an answer in words within seconds.
 */
package benchful.hostile;
