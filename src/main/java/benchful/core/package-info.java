/**
 * The computations: plain Java and named mathematical libraries only.
 * No clock, no hidden randomness, no input or output; the same input gives the same answer.
 */
package benchful.core;
