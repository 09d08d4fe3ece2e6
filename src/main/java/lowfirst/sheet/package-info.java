/**
 * Documents, and all wording: here the set of them, a room for each topic below. A document is a
 * value; text, HTML, CSV and PDF writers show the same one.
 */
package lowfirst.sheet;
