/** What lies on the bench or goes with the tutor on one sheet: the plan, and the lists to pack, cut, shop, sign and write on. */
package benchful.documents.lists;
