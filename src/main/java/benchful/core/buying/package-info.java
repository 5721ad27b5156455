/**
 * What to buy: packs and suppliers at least cost, what is left over, and the day to order by.
 * Money is exact. A line's value and its VAT are each rounded half up to the currency's smallest unit, and totals are sums
 * of rounded lines; nothing is rounded twice.
 */
@NullMarked
package benchful.core.buying;

import org.jspecify.annotations.NullMarked;
