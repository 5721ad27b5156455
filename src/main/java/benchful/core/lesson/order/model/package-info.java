/** A lesson on the time line, in whole grains of time: activities, gaps and the hours in which the class works. */
@NullMarked
package benchful.core.lesson.order.model;

import org.jspecify.annotations.NullMarked;
