package lowfirst.sheet.body;

import java.util.Locale;
import java.util.regex.Pattern;
import lowfirst.part.PartType;

/**
 * How a body sits on its board, as far as the kind of part alone doesn't tell: a diode lies, but
 * not in a body with a metal tab; a resistor lies, unless its package says that it stands.
 */
public enum Stance {
  /** Along the board, a lead at each end. */
  LYING,
  /** On end, one lead bent down along the body. */
  ON_END,
  /** On leads in a row at one end: a transistor's body, whatever is in it. */
  ON_LEADS,
  /** The same body, its leads bent so that it lies on the board. */
  BENT_OVER,
  /** Upright, or flat on the board, as its kind does. */
  AS_ITS_KIND;

  /** Bodies of transistors, by the names of JEDEC and the trade for those with more leads. */
  private static final Pattern TRANSISTOR =
      Pattern.compile(
          "TO-?(92|126|202|218|220|225|247|251|262|264|3P)(?!\\d).*|SOT-?(32|54|78)(?!\\d).*"
              + "|.*(PENTAWATT|MULTIWATT).*");

  /** How a part of this type sits. */
  public static Stance of(PartType type) {
    String name = type.packageName().toUpperCase(Locale.ROOT);
    String plain = name.substring(name.lastIndexOf(':') + 1).strip();
    if (TRANSISTOR.matcher(plain).matches()) {
      return plain.contains("HORIZONTAL") ? BENT_OVER : ON_LEADS;
    }
    return switch (type.kind()) {
      case RESISTOR, INDUCTOR, DIODE, SCHOTTKY_DIODE, ZENER_DIODE -> axial(plain);
      case ELECTROLYTIC_CAPACITOR -> plain.contains("AXIAL") ? axial(plain) : AS_ITS_KIND;
      case TRANSISTOR, BIPOLAR_TRANSISTOR, JFET, MOSFET, THYRISTOR, REGULATOR -> ON_LEADS;
      default -> AS_ITS_KIND;
    };
  }

  private static Stance axial(String name) {
    if (name.contains("RADIAL") || name.contains("TOROID")) {
      return AS_ITS_KIND;
    }
    return name.contains("VERTICAL") || name.contains("STANDING") ? ON_END : LYING;
  }

  /** Whether the body is a transistor's. */
  public boolean isTransistorLike() {
    return this == ON_LEADS || this == BENT_OVER;
  }
}
