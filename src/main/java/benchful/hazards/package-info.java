/**
 * Hazards: the usual cautions of the bench, keyed to materials, tools and steps. The library comes with the program; the
 * tutor may change its texts and add her own. Data sheets, venue rules, local codes and licensed practice come first.
 */
package benchful.hazards;
