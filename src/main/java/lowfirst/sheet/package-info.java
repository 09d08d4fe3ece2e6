/**
 * Documents, and all wording. A document is a value; text, HTML, CSV and PDF writers show the same
 * one.
 */
package lowfirst.sheet;
