/**
 * Stock: the ledger of what came onto the shelf, was reserved, packed, used, spoilt, returned or counted.
 * What is on hand is always the sum of these movements; a count corrects by a movement of its own.
 */
package benchful.stock;
