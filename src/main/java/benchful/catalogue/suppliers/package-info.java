/** The pages of those who sell materials. */
package benchful.catalogue.suppliers;
