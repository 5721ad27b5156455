/** One piece of a project in one size, worked out: its workings, its material lines, its repeats. */
package benchful.plans.materials.sizes;
