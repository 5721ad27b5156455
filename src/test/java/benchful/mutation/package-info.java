/**
 * How many changes of the program its plain tests notice. The changes are made by the profile {@code mutation}; here each
 * package's share is held against its floor.
 */
package benchful.mutation;
