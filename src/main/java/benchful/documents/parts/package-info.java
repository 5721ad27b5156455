/** What every kind of print-out is put together from: the class and its plan, its head, pictures, signs, cautions and amounts. */
package benchful.documents.parts;
