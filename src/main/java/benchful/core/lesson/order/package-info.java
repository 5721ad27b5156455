/**
 * Puts the steps of a class on the clock: the request becomes whole seconds on one time line, a planner chooses the starts,
 * and the plan is written out with slack, load and reasons. A checker among the tests judges any plan from the request alone.
 * Planners: {@code ListPlanner} (fast, sound) and {@code SolverPlanner} (proves the shortest).
 */
@NullMarked
package benchful.core.lesson.order;

import org.jspecify.annotations.NullMarked;
