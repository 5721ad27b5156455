/** The pictures of a project: taken in as files, made harmless and fit to print, stored and shown. */
package benchful.projects.pictures;
