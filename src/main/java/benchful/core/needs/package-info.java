/**
 * What a class needs of each material: the students' pieces, the demonstration, spare kits, shared amounts and waste.
 * Every number comes with the sentences that explain it.
 * Cut pieces stay pieces here; which length they are cut from is the cutting plan's work.
 */
@NullMarked
package benchful.core.needs;

import org.jspecify.annotations.NullMarked;
