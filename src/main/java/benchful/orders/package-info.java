/**
 * Orders to suppliers: written for one class or several, sent, received in one parcel or more, or cancelled.
 * What comes is put on the shelf by the stock ledger; what is still to come is not bought twice.
 */
package benchful.orders;
