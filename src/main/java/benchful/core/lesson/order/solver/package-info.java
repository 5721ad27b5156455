/** The shortest order, sought and proven by a constraint solver. */
@NullMarked
package benchful.core.lesson.order.solver;

import org.jspecify.annotations.NullMarked;
