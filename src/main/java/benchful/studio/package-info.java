/** Who teaches here: what stands on orders, handouts and labels, and what new things begin with. */
package benchful.studio;
