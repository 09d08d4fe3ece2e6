/** Spreadsheet files: their sheets as rows, with what is hidden or struck out. */
package lowfirst.intake.workbook;
