/** A backup as a file: its manifest, its parts with their checks, and its lock. */
package benchful.backups.archive;
