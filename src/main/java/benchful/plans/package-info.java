/**
 * The whole computed plan of a class, from one file of inputs: sizes, kits, materials, purchases and the timed lesson.
 * Pages, print-outs and the API all read this one answer. Here stands the planner itself; what it takes is worked out below it
 * ({@code materials}), what shows, varies and keeps plans stands above.
 */
package benchful.plans;
