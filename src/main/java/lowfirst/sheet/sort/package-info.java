/** The bag: the sort sheet, labels for the tray, what a marking says, what is mistaken for what. */
package lowfirst.sheet.sort;
