/** What no plan could meet, found before one is sought. */
@NullMarked
package benchful.core.lesson.order.check;

import org.jspecify.annotations.NullMarked;
