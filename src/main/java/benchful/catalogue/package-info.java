/**
 * The catalogue: materials, who sells them in which packs, and how they are counted, wasted and cut.
 * Stock is kept elsewhere, as movements; here a sheet may carry what is on hand so that a file can be planned alone.
 */
package benchful.catalogue;
