/**
 * The class as it goes on: an append-only log of taps ({@code Tap}), and the state that it amounts to ({@code Running}), which is
 * nothing but a fold of the log over the plan. Taps of several devices are put in order by their time, and one that came twice
 * counts once, so whoever has the same taps sees the same class. {@code js/day/running.js} is the same fold for a browser without a
 * network; both are held to the same cases.
 */
@NullMarked
package benchful.core.day;

import org.jspecify.annotations.NullMarked;
