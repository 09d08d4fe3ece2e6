/** What one cell says: designators, sides, angles, fitted or not, amounts. */
package lowfirst.intake.cell;
