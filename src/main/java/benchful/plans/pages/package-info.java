/** Where plans are asked for: the page of a class, its import, and the API. */
package benchful.plans.pages;
