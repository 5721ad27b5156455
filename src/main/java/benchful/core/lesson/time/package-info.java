/**
 * How long a make step takes a whole class: the spread of students' paces, the last of n to finish,
 * turns at shared tools and waiting for help. Every number comes with the sentence that explains it.
 * Times are in seconds as {@code double} here, and become whole minutes when they are planned.
 */
@NullMarked
package benchful.core.lesson.time;

import org.jspecify.annotations.NullMarked;
