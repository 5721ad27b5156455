/**
 * The sample classes: an invented scenario to try the program with, loaded when asked for and removed with one button.
 * Its files stand in {@code sample-classes/} and are packed into the program.
 */
package benchful.samples;
