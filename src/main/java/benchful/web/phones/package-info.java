/** Where phones reach the program, and the codes they read it from. */
package benchful.web.phones;
