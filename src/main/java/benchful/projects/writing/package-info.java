/** Writing a project down: its form, and its import from a file. */
package benchful.projects.writing;
