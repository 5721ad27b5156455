/**
 * Personal data: where a person is named over all that is stored, bin and earlier versions included, taking that out as a file, erasing it, and
 * removing the students of classes that are long over.
 */
package benchful.privacy;
