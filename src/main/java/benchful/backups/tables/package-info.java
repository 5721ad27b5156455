/** What the database holds, read at one moment into an archive and filled in again from one. */
package benchful.backups.tables;
