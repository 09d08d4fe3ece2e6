/**
 * What a table has: its columns, their headers in many languages, its rows, numbers as they are
 * written.
 */
package lowfirst.intake.column;
