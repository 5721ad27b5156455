/**
 * Whole lives of things that nobody thought of: files at the edges of what is allowed, sent through every page and print-out,
 * and sendings that no browser makes. Short as part of every build; long with {@code -Dbenchful.lives=long}.
 */
package benchful.lives;
