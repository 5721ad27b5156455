/** Work that takes long: where it is done, who still waits for it, and what is remembered of it. */
package benchful.web.tasks;
