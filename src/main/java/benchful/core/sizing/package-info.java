/**
 * The sizes of one piece: strands and bracelets of beads, wound wire, poured and cut shapes.
 * Each engine takes one request and gives one answer, with sentences that say how it came about.
 * Lengths are millimetres, masses grams, volumes millilitres unless a quantity says otherwise.
 */
@NullMarked
package benchful.core.sizing;

import org.jspecify.annotations.NullMarked;
