/**
 * The whole computed plan of a class, from one file of inputs: sizes, kits, materials, purchases and the timed lesson.
 * Pages, print-outs and the API all read this one answer.
 */
package benchful.plans;
