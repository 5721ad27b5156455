/** What no plan could meet, found before one is sought. */
package benchful.core.lesson.order.check;
