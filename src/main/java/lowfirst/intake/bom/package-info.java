/** The bill of materials: from a table to part types and their places. */
package lowfirst.intake.bom;
