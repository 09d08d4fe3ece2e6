package lowfirst.board;

import lowfirst.problem.Place;

/**
 * What arrived: one row of {@code bag.csv}.
 *
 * @param text part type or marking as written
 * @param quantity how many arrived
 * @param bag label of the bag; may be empty
 */
public record BagLine(String text, int quantity, String bag, Place place) {}
