/**
 * Print-outs: what the tutor hands out, sticks on kits, packs, shops and checks by, as tagged PDFs in A4 and US Letter.
 * Each is a sheet (a record of texts ready to print), filled from a class and its plan, and a plain template.
 */
package benchful.documents;
