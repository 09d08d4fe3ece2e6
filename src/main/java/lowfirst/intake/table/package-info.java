/** Finds the table in the rows: its header, where it begins and ends, what is none of it. */
package lowfirst.intake.table;
