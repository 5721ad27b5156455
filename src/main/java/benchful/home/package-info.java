/**
 * The first page: what to do next.
 * It asks the other features and keeps nothing of its own.
 */
package benchful.home;
