/**
 * What is entered, between a form or a file and its record: the sheet's schema, how its fields are named and written,
 * what is wrong with it and where, and how it lies in the database.
 */
package benchful.web.forms;
