package lowfirst.part;

import java.util.Optional;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Part types of which only a kind, a text and a package are known, for tests. */
public final class PartTypes {
  private PartTypes() {}

  /** A part type without ratings. */
  public static PartType type(PartKind kind, String text, String packageName) {
    return type(kind, text, packageName, null);
  }

  /** A part type that bears so many watts, or null where nothing says so. */
  public static PartType type(PartKind kind, String text, String packageName, String watts) {
    return new PartType(
        kind,
        text,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.ofNullable(watts).map(w -> Quantity.of(w, Dimension.POWER)),
        "",
        packageName);
  }
}
