/**
 * What happens to a form between the press of its button and the page that takes it: it is known as the program's own, it is
 * taken once however often it is pressed, and nothing typed into it is lost where it can't be taken.
 */
package benchful.web.sending;
