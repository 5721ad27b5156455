/**
 * What pages share: numbers, times and texts as people read them, long lists, and words for what can't be used.
 * It knows no feature.
 */
package benchful.web;
