package lowfirst.intake.check;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.kind.PartOfLine;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.marking.WrittenValue;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * Whether a BOM and a placement list mean the same part: {@code 4k7} and {@code 4700} do, {@code
 * TO-92} and {@code TO-92_Inline} do. Where neither can be understood, they are not said to differ.
 */
final class SameOrNot {
  private final BodyOutlines table = ShippedTables.bodyOutlines();
  private final Map<List<String>, Boolean> values = new HashMap<>();
  private final Map<List<String>, Boolean> packages = new HashMap<>();

  /** Whether the placement list's value contradicts the part type. */
  boolean valueDiffers(PartType type, String placed) {
    if (placed.isEmpty() || type.text().isEmpty() || placed.equals(type.text())) {
      return false;
    }
    List<String> asked = List.of(type.kind().name(), type.text(), type.typeNumber(), placed);
    return values.computeIfAbsent(asked, none -> readValueDiffers(type, placed));
  }

  private static boolean readValueDiffers(PartType type, String placed) {
    // A sign alone stands where nothing was written, and a mark or a symbol's name is no value.
    if (key(placed).isEmpty()
        || key(placed).equals(key(type.text()))
        || type.kind() == PartKind.BOARD_FEATURE
        || FittedSigns.leaveOut(placed)
        || PartOfLine.isSymbolName(placed)
        || PartOfLine.isSymbolName(type.text())) {
      return false;
    }
    Optional<Dimension> dimension = type.kind().measures();
    if (dimension.isPresent()) {
      Optional<Quantity> other =
          WrittenValue.parse(placed, dimension).value().map(WrittenValue::value);
      // A value against a part number says nothing: only two values can differ.
      return type.value().isPresent()
          && other.isPresent()
          && !type.value().get().sameAs(other.get());
    }
    return !resemble(placed, type.text())
        && !resemble(placed, type.typeNumber())
        && Contradiction.between(placed, type.text() + " " + type.typeNumber());
  }

  /** Whether the placement list's package contradicts the part type's. */
  boolean packageDiffers(PartType type, String placed) {
    String own = type.packageName();
    if (placed.isEmpty() || own.isEmpty() || placed.equals(own)) {
      return false;
    }
    List<String> asked = List.of(type.kind().name(), own, placed);
    return packages.computeIfAbsent(asked, none -> readPackageDiffers(type.kind(), own, placed));
  }

  private boolean readPackageDiffers(PartKind kind, String own, String placed) {
    if (resemble(placed, own)) {
      return false;
    }
    Optional<BodyOutline> one = table.find(own, kind).value().filter(found -> !found.isAssumed());
    Optional<BodyOutline> other =
        table.find(placed, kind).value().filter(found -> !found.isAssumed());
    return one.isPresent() && other.isPresent() && differ(one.get(), other.get());
  }

  private static boolean differ(BodyOutline one, BodyOutline other) {
    return apart(one.pins(), other.pins(), 0)
        || apart(one.pitchMillimetres(), other.pitchMillimetres(), 0.3)
        || apart(one.seatedHeightMillimetres(), other.seatedHeightMillimetres(), 1.0)
        || apart(one.lengthMillimetres(), other.lengthMillimetres(), 1.5);
  }

  /** Zero means that it is not known. */
  private static boolean apart(double one, double other, double slack) {
    return one > 0 && other > 0 && Math.abs(one - other) > slack;
  }

  /** Whether one is the other with more words around it, case and punctuation aside. */
  static boolean resemble(String one, String other) {
    String first = key(one);
    String second = key(other);
    return !first.isEmpty()
        && !second.isEmpty()
        && (first.contains(second) || second.contains(first));
  }

  /** Without a library's name in front, case and punctuation. */
  private static String key(String text) {
    String name = text.substring(text.indexOf(':') + 1);
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}µΩ]+", "");
  }
}
