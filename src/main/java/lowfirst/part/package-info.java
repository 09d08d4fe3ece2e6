/**
 * What one buys: kinds of part, body outlines with seated heights, datasheet lines. Imports only
 * {@code marking} and below.
 */
package lowfirst.part;
