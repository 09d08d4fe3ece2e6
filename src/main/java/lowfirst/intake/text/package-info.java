/** From bytes to text and rows: encodings, quotes, signs that are none of the table's. */
package lowfirst.intake.text;
