/**
 * The start of the program, as the person who starts it sees it: where it can't start, one plain word of what is amiss, where,
 * and how to mend it. It knows no feature.
 */
package benchful.start;
