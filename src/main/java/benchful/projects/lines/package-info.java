/**
 * A project's lists as lines of text, as people write them down and copy them from elsewhere: one line a size, a material, a tool
 * or a step. Lines are read into rows of the sheet, and rows are written as lines. What a line can't say stays with its row.
 */
package benchful.projects.lines;
