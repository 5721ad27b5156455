/**
 * The PostgreSQL that the program carries and starts itself, so that a tutor has nothing to set up.
 * A server on loopback keeps its files in the data folder; {@link benchful.database.CarriedPostgres} tells its life.
 * One setting, {@code quarkus.datasource.jdbc.url}, points at another server instead; then nothing here runs.
 */
package benchful.database;
