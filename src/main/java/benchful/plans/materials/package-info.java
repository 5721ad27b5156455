/**
 * What a class takes, or several together: sizes, kits and needs, then cutting and buying, from one request to the whole answer.
 * It knows no lesson, no page and no stored class.
 */
package benchful.plans.materials;
