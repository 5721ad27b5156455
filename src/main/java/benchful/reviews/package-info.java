/**
 * Reviews: what really happened in a class, beside its plan, and what several classes of a project have in common.
 * The plan compared with is the one that was kept when the class was printed or first reviewed.
 */
package benchful.reviews;
