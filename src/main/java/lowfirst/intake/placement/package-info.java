/** The placement list: from a table to positions, with the units that it is written in. */
package lowfirst.intake.placement;
