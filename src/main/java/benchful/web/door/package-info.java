/**
 * Between the network and the pages: what no stranger may ask, what is too much, the headers that every answer bears, and the
 * words in which a failure is told.
 */
package benchful.web.door;
