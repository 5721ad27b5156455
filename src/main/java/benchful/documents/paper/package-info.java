/** How a print-out is wanted: the paper, the sheet of labels, large or plain print. */
package benchful.documents.paper;
