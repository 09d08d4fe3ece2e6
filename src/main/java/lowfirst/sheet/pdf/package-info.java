/** Documents as PDF. PDFBox only here. */
package lowfirst.sheet.pdf;
