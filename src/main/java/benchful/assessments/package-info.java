/**
 * Risk assessments: one for a class, drafted from the hazards that its project really uses, completed and signed by the tutor.
 * They are her judgement; the program only gathers the usual cautions and does the multiplication.
 */
package benchful.assessments;
