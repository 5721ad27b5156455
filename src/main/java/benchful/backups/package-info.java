/**
 * Backups: everything that is stored as open files in one archive, on a schedule and by one press, and put back from it.
 * {@link benchful.backups.tables.Snapshot} reads a moment, {@link benchful.backups.tables.BackupWriter} packs it, {@link benchful.backups.tables.Restorer}
 * puts it back; no feature is known by name, so a new table is carried without being mentioned here.
 */
package benchful.backups;
