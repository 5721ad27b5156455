/** Price lists and stock lists as files: out to be filled in or kept, in with a preview first. */
package benchful.stock.lists;
