/**
 * The chance that a planned class ends on time: the plan is taught thousands of times with drawn students, each with a pace of
 * their own, who share tools, ask for help, wait for drying and gather for demonstrations. The same seed gives the same answer.
 * Start at {@code ClassSimulation}; the answer is {@code Risk}.
 */
@NullMarked
package benchful.core.lesson.risk;

import org.jspecify.annotations.NullMarked;
