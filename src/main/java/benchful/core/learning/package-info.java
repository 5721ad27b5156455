/**
 * What classes teach the tutor: planned times against what really happened, step by step, in one class and over many.
 * A step is named as running over only beyond a margin, so that a minute here or there is not blamed.
 */
package benchful.core.learning;
