/** The assembly: its steps, the book of a board, what the hand minds in a step. */
package lowfirst.sheet.steps;
