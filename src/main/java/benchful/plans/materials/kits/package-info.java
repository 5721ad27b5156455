/** Who makes what: a seat for each student, the kit for each seat, and what all kits come to. */
package benchful.plans.materials.kits;
