/** A class otherwise than it is: what would help it, found and put into the fields of its setup, and what-ifs side by side. */
package benchful.plans.whatif;
