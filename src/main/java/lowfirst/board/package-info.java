/**
 * What is built and what it switches: kit, boards, items, placements; rails, channels, drivers,
 * loads. Pure vocabulary, filled by {@code intake}. Imports only {@code part} and below.
 */
package lowfirst.board;
