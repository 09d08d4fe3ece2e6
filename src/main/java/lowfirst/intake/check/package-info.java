/** Holds the tables of a kit against each other. */
package lowfirst.intake.check;
