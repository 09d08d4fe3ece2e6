package lowfirst.assembly;

import java.util.Arrays;
import java.util.List;

/**
 * Heights told apart: from the lowest up, a rank takes in everything up to 0.3 mm above its lowest
 * member. Below that an order is noise: two editions of one maker's sheet differ by 0.1 mm, and two
 * makers' bodies of one size by 0.3 mm.
 */
final class HeightRanks {
  static final double NEAR_TIE_MILLIMETRES = 0.3;

  /** Room for rounding when heights are given to a hundredth of a millimetre. */
  private static final double ROUNDING = 1e-6;

  private final double[] lowest;
  private final int count;

  private HeightRanks(double[] lowest, int count) {
    this.lowest = lowest;
    this.count = count;
  }

  /** The ranks of these groups' heights. */
  static HeightRanks of(List<Group> groups) {
    double[] heights =
        groups.stream()
            .filter(group -> group.height().isPresent() && !group.isWireLink())
            .mapToDouble(group -> group.height().getAsDouble())
            .sorted()
            .toArray();
    double[] lowest = new double[heights.length];
    int count = 0;
    for (double height : heights) {
      if (count == 0 || height - lowest[count - 1] > NEAR_TIE_MILLIMETRES + ROUNDING) {
        lowest[count++] = height;
      }
    }
    return new HeightRanks(lowest, count);
  }

  /** The rank of a group by its height alone: wire links 0, unknown heights last. */
  int of(Group group) {
    if (group.isWireLink()) {
      return 0;
    }
    if (group.height().isEmpty()) {
      return unknown();
    }
    int found = Arrays.binarySearch(lowest, 0, count, group.height().getAsDouble());
    return 1 + (found >= 0 ? found : -found - 2);
  }

  /** The rank of heights that nobody knows. */
  int unknown() {
    return count + 1;
  }
}
