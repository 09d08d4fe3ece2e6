/** Documents as plain text for a terminal or a file. */
package lowfirst.sheet.text;
