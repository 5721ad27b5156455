/**
 * Projects: the pieces that can be taught, with their sizes, material lines, steps, hazards, texts and pictures.
 * A project is one sheet, edited, copied, imported and exported as a whole.
 */
package benchful.projects;
