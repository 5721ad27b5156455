/** From what is stored to its plan: the files of classes gathered, planned alone or together, and the plan kept that was used. */
package benchful.plans.stored;
