/** A lesson on the time line, in whole grains of time: activities, gaps and the hours in which the class works. */
package benchful.core.lesson.order.model;
