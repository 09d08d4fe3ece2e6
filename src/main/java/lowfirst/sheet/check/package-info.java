/** What is wrong in a kit's tables, and how they were understood. */
package lowfirst.sheet.check;
