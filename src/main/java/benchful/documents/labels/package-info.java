/** Labels for kits and seats, fitted to their sheet. */
package benchful.documents.labels;
