package lowfirst.assembly;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * A group with its rank: groups of lower rank go first; among groups of one rank, the order given
 * is preferred, and another one allowed.
 *
 * @param position its place in the preferred order, from 0
 * @param rank 0 for wire links, then one for each height that tolerances tell apart
 * @param after positions of groups of the same rank that must go before it
 * @param rule why it goes here
 * @param why the same in the words of this group
 */
record Ranked(Group group, int position, int rank, Set<Integer> after, Rule rule, String why) {

  OptionalDouble height() {
    return group.height();
  }

  Ranked saysInstead(Rule other, String words) {
    return new Ranked(group, position, rank, after, other, words);
  }
}
