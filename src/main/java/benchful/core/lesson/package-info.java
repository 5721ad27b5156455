/**
 * The timed plan of a class: its steps, the room's tools and hours, and the plan that answers them.
 * This package holds only the words of the contract; the work is done in its subpackages.
 * Lengths are {@link java.time.Duration}, clock times {@link java.time.LocalDateTime}; placed times are whole seconds.
 */
@NullMarked
package benchful.core.lesson;

import org.jspecify.annotations.NullMarked;
