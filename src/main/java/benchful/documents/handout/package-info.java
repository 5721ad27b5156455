/** What a student takes home. */
package benchful.documents.handout;
