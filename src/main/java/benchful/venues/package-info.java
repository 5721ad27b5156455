/**
 * Venues: the rooms classes are held in, their seats and equipment.
 * What a room lacks decides whether a project can be taught there.
 */
package benchful.venues;
