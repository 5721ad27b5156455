/**
 * Findings: what the reviewed classes of a project show of its minutes, of help and of what spoils, proposed for the project's sheet, and what became of each
 * proposal. How they are learned stands in {@code core.learning}; here reviews are put to it, and its answers to the tutor, who
 * takes or refuses them. Nothing is taken by itself.
 */
package benchful.findings;
