/** A board in one IPC-2581 file, laid out as the two tables. */
package lowfirst.intake.design;
