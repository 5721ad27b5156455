/** Plans and cuttings drawn to scale, as SVG. */
package benchful.plans.pictures;
