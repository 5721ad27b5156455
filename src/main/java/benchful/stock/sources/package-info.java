/** Where materials come from that somebody misses and nobody in the catalogue sells: they are here already, or somebody sells them. */
package benchful.stock.sources;
