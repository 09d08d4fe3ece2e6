/** The tables that come with the program: body outlines and the catalogue of part types. */
package lowfirst.intake.shipped;
