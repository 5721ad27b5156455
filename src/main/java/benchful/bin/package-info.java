/**
 * What was removed or saved over, kept for thirty days: the bin with its way back, and the earlier versions of sheets.
 * Features hand their removals to {@link benchful.bin.Removals}.
 */
package benchful.bin;
