package lowfirst.assembly;

import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a batch that is being filled holds so far, as far as it limits what may join it.
 *
 * <p>A part of unknown height joins only parts with the same package or type number: nobody can say
 * that two other unknown heights are alike.
 *
 * @param parts how many parts on one unit
 * @param low the lowest height in it; infinite with none
 * @param high the tallest height in it; minus infinite with none
 * @param unknown the package or type number of its parts of unknown height; empty without such
 *     parts
 */
record OpenBatch(int parts, double low, double high, String unknown) {
  static final OpenBatch EMPTY =
      new OpenBatch(0, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, "");

  private static final double ROUNDING = 1e-6;

  /** Whether a group may join. */
  boolean takes(Group group, AssemblyOptions options) {
    if (parts == 0) {
      return true;
    }
    if (parts + group.size() > options.partsPerBatch()) {
      return false;
    }
    OptionalDouble height = group.height();
    if (height.isEmpty()) {
      return !unknown.isEmpty() && unknown.equals(unknownKey(group));
    }
    double spread = Math.max(high, height.getAsDouble()) - Math.min(low, height.getAsDouble());
    return unknown.isEmpty() && spread <= options.heightSpreadMillimetres() + ROUNDING;
  }

  /** With a group in it. */
  OpenBatch with(Group group) {
    return group.height().isEmpty()
        ? new OpenBatch(parts + group.size(), low, high, unknownKey(group))
        : new OpenBatch(
            parts + group.size(),
            Math.min(low, group.height().getAsDouble()),
            Math.max(high, group.height().getAsDouble()),
            unknown);
  }

  /** Whether whatever may join {@code other} may join this. */
  boolean isAsOpenAs(OpenBatch other) {
    return parts <= other.parts
        && low >= other.low
        && high <= other.high
        && (parts == 0 || unknown.equals(other.unknown));
  }

  /** One package, or else one type number, is one height; a part with neither is like no other. */
  private static String unknownKey(Group group) {
    return Stream.of(group.type().packageName(), group.type().typeNumber())
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .findFirst()
        .orElse("neither: " + group.first().designator());
  }
}
