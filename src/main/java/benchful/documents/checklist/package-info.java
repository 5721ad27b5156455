/** The tutor's checklist, from the days before to the last look round. */
package benchful.documents.checklist;
