/** The cutting problem in whole numbers that lengths and sheets share: kinds, patterns, bounds, and the integer programme that proves a plan. */
package benchful.core.cutting.patterns;
