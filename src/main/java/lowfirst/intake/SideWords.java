package lowfirst.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Side;

/** The words and signs by which exports name the sides of a board; common practice. */
final class SideWords {
  private static final Set<String> TOP =
      Set.of(
          "top",
          "t",
          "toplayer",
          "topside",
          "top layer",
          "front",
          "f",
          "fcu",
          "frontside",
          "component",
          "components",
          "componentside",
          "comp",
          "primary",
          "primaryside",
          "upper",
          "oben",
          "oberseite",
          "o",
          "bestuckungsseite",
          "dessus",
          "haut",
          "avant",
          "superior",
          "arriba",
          "cima",
          "sopra",
          "superiore",
          "lato superiore",
          "boven",
          "gora",
          "horni",
          "1",
          "layer1",
          "l1",
          "+",
          "▲",
          "△",
          "↑",
          "⬆");
  private static final Set<String> BOTTOM =
      Set.of(
          "bottom",
          "b",
          "bot",
          "bottomlayer",
          "bottomside",
          "bottom layer",
          "back",
          "bcu",
          "backside",
          "solder",
          "solderside",
          "secondary",
          "secondaryside",
          "lower",
          "unten",
          "unterseite",
          "u",
          "lotseite",
          "dessous",
          "bas",
          "arriere",
          "inferior",
          "abajo",
          "baixo",
          "sotto",
          "inferiore",
          "lato inferiore",
          "onder",
          "dol",
          "spodni",
          "2",
          "16",
          "layer2",
          "l2",
          "-",
          "▼",
          "▽",
          "↓",
          "⬇");
  private static final Set<String> YES =
      Set.of("yes", "y", "true", "1", "x", "m", "mirrored", "ja", "oui", "si", "sim", "tak");
  private static final Set<String> NO =
      Set.of("no", "n", "false", "0", "", "-", "nein", "non", "nao", "nie");

  private SideWords() {}

  /** The side that a cell names. */
  static Optional<Side> side(String text) {
    String key = text.length() == 1 ? text.toLowerCase(Locale.ROOT) : HeaderWords.key(text);
    if (TOP.contains(key)) {
      return Optional.of(Side.TOP);
    }
    return BOTTOM.contains(key) ? Optional.of(Side.BOTTOM) : Optional.empty();
  }

  /** The side of a part that a cell calls mirrored or not; empty when it says nothing. */
  static Optional<Side> mirrored(String text) {
    String key = HeaderWords.key(text);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (YES.contains(key)) {
      return Optional.of(Side.BOTTOM);
    }
    return NO.contains(key) ? Optional.of(Side.TOP) : Optional.empty();
  }

  /** The side that a file's name states for all its rows. */
  static Optional<Side> inFileName(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    boolean bottom = name.matches(".*(^|[^a-z])(bottom|bot|back|unten)([^a-z]|$).*");
    return bottom ? Optional.of(Side.BOTTOM) : Optional.empty();
  }
}
