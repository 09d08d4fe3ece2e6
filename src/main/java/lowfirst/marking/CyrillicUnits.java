package lowfirst.marking;

import java.util.Map;

/** The units of GOST 8.417 in Cyrillic letters, as the SI writes them: 10 кОм, 0,1 мкФ. */
final class CyrillicUnits {
  private static final String AFTER_DIGIT = "(?<=\\d ?)";

  private static final Map<String, String> UNITS =
      Map.of(
          "кОм", "kΩ", "МОм", "MΩ", "Ом", "Ω", "мкФ", "uF", "нФ", "nF", "пФ", "pF", "мкГн", "uH",
          "мГн", "mH", "В", "V", "Вт", "W");

  private CyrillicUnits() {}

  /** Whether a text has such letters at all; nearly none has, and this is quick to say. */
  static boolean mayStandIn(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) >= '\u0400' && text.charAt(at) <= '\u04ff') {
        return true;
      }
    }
    return false;
  }

  /** The text with the SI's letters. */
  static String latin(String text) {
    String latin = text;
    for (Map.Entry<String, String> unit : UNITS.entrySet()) {
      latin = latin.replaceAll(AFTER_DIGIT + unit.getKey() + "(?!\\p{L})", unit.getValue());
    }
    return latin;
  }
}
