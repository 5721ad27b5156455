/** The shortest order, sought and proven by a constraint solver. */
package benchful.core.lesson.order.solver;
