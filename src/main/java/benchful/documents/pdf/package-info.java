/** From a manuscript to a tagged PDF with its fonts, and many of them bound into one file. It knows no class. */
package benchful.documents.pdf;
