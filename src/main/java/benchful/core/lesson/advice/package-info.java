/**
 * What would help a class that does not fit: every change a tutor could make is planned and simulated anew, alone and in pairs,
 * and listed with what it gains and what it costs, best first.
 * Start at {@code Advisor}; each {@code Suggestion} carries the changed request, so that it can be taken with one click.
 */
@NullMarked
package benchful.core.lesson.advice;

import org.jspecify.annotations.NullMarked;
