/**
 * Whether one part fits in place of another: ratings, board, marking, and every channel it serves.
 * Imports the other computations.
 */
package lowfirst.swap;
