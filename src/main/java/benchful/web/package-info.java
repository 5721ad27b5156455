/**
 * What pages and files share: reading and writing sheets, forms, faults, numbers as people read them, and error pages.
 * It knows no feature.
 */
package benchful.web;
