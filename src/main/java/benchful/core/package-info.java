/**
 * The computations: plain Java and named mathematical libraries only.
 * No clock, no hidden randomness, no input or output; the same input gives the same answer.
 */
@NullMarked
package benchful.core;

import org.jspecify.annotations.NullMarked;
