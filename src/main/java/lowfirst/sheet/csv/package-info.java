/** Documents' tables as CSV for machines; no cell can start a formula in a spreadsheet. */
package lowfirst.sheet.csv;
