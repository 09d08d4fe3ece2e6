package lowfirst.intake.cell;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Side;
import lowfirst.intake.column.HeaderWords;

/** The words and signs by which exports name the sides of a board; common practice. */
public final class SideWords {
  private static final Set<String> TOP =
      keys(
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
          "composant",
          "composants",
          "componenti",
          "componentes",
          "bauteile",
          "bauteilseite",
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
          "bovenkant",
          "componentzijde",
          "gora",
          "gorna",
          "horni",
          "nahore",
          "верхняя",
          "верхний",
          "компонентов",
          "1",
          "layer1",
          "l1",
          "vorderseite",
          "recto",
          "verh",
          "верх",
          "上",
          "上面",
          "表",
          "表面",
          "顶层",
          "顶",
          "顶面",
          "正面",
          "元件面",
          "部品面",
          "cs",
          "+",
          "▲",
          "△",
          "↑",
          "⬆");
  private static final Set<String> BOTTOM =
      keys(
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
          "soudure",
          "soudures",
          "saldatura",
          "saldature",
          "soldadura",
          "soldaduras",
          "solda",
          "soldeerzijde",
          "пайки",
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
          "onderkant",
          "dol",
          "doł",
          "dolna",
          "spodni",
          "dole",
          "нижняя",
          "нижний",
          "2",
          "16",
          "layer2",
          "l2",
          "ruckseite",
          "verso",
          "низ",
          "下",
          "下面",
          "裏",
          "裏面",
          "底层",
          "底",
          "底面",
          "反面",
          "背面",
          "焊接面",
          "はんだ面",
          "半田面",
          "ss",
          "-",
          "▼",
          "▽",
          "↓",
          "⬇");
  private static final Set<String> YES =
      Set.of("yes", "y", "true", "1", "x", "m", "mirrored", "ja", "oui", "si", "sim", "tak");
  private static final Set<String> NO =
      Set.of("no", "n", "false", "0", "", "-", "nein", "non", "nao", "nie");

  /** Of a part through the board, or in all layers of its drawing. */
  private static final Set<String> BOTH =
      keys(
          "both",
          "all",
          "both sides",
          "all layers",
          "multi layer",
          "through",
          "through hole",
          "top bottom",
          "top and bottom",
          "beide",
          "beidseitig",
          "alle",
          "les deux",
          "ambos",
          "entrambi",
          "обе",
          "双面",
          "两面",
          "両面");

  private static final Set<String> NEITHER =
      keys("offboard", "off board", "not on board", "outside", "unplaced", "not placed", "extern");

  /** A longer text is prose. */
  private static final int LONGEST = 60;

  private static final Pattern BOTTOM_FILE =
      wordOf(
          "bottom|bot|back|unten|unterseite|rückseite|rueckseite|lötseite|loetseite|dessous|mnb");
  private static final Pattern TOP_FILE =
      wordOf("top|front|oben|oberseite|vorderseite|bestückungsseite|bestueckungsseite|dessus|mnt");

  private SideWords() {}

  /** Whether a cell names both sides. */
  public static boolean areBoth(String text) {
    return text.length() <= LONGEST && BOTH.contains(HeaderWords.key(text));
  }

  /** Whether a cell says that the part is not on the board. */
  public static boolean isNeither(String text) {
    return text.length() <= LONGEST && NEITHER.contains(HeaderWords.key(text));
  }

  /** Spelt as cells are compared; a sign alone stays what it is. */
  private static Set<String> keys(String... words) {
    return Stream.of(words)
        .map(word -> word.length() == 1 ? word : HeaderWords.key(word))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The side that a cell names. */
  public static Optional<Side> side(String text) {
    String key = text.length() == 1 ? text.toLowerCase(Locale.ROOT) : HeaderWords.key(text);
    if (TOP.contains(key)) {
      return Optional.of(Side.TOP);
    }
    return BOTTOM.contains(key) ? Optional.of(Side.BOTTOM) : inside(text);
  }

  /** The side that one of several words names, such as Top Overlay; not if another word differs. */
  public static Optional<Side> inside(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    boolean top = false;
    boolean bottom = false;
    for (String word : text.split("[^\\p{L}]+")) {
      String key = HeaderWords.key(word);
      top |= key.length() > 2 && TOP.contains(key);
      bottom |= key.length() > 2 && BOTTOM.contains(key);
    }
    // Of words such as "component bottom" the one about the board's side counts.
    String all = text.toLowerCase(Locale.ROOT);
    boolean plain = all.contains("top") != (all.contains("bottom") || all.contains("bot"));
    if (top == bottom && !plain) {
      return Optional.empty();
    }
    boolean isTop = top == bottom ? all.contains("top") : plain ? all.contains("top") : top;
    return top || bottom ? Optional.of(isTop ? Side.TOP : Side.BOTTOM) : Optional.empty();
  }

  /**
   * The two sides of a column that holds nothing but two signs which name no side by themselves, or
   * which name another one alone: 0 and 1, A and B, L1 and L4.
   */
  public static Map<String, Side> ofPair(Set<String> texts) {
    if (texts.size() != 2) {
      return Map.of();
    }
    List<String> pair = texts.stream().sorted().toList();
    String first = pair.get(0).toUpperCase(Locale.ROOT);
    String second = pair.get(1).toUpperCase(Locale.ROOT);
    Optional<Side> one = side(first);
    Optional<Side> other = side(second);
    if (one.isPresent() && other.isPresent() && !one.equals(other) && !first.equals("0")) {
      return Map.of();
    }
    boolean known =
        (first.equals("0") && second.equals("1"))
            || (first.equals("A") && second.equals("B"))
            || (first.equals("N") && second.equals("Y"))
            || (first.equals("FALSE") && second.equals("TRUE"))
            || (first.matches("L?1") && second.matches("L?([2-9]|[1-9][0-9])"));
    return known ? Map.of(pair.get(0), Side.TOP, pair.get(1), Side.BOTTOM) : Map.of();
  }

  /** The side of a part that a cell calls mirrored or not; empty when it says nothing. */
  public static Optional<Side> mirrored(String text) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String key = HeaderWords.key(text);
    if (YES.contains(key)) {
      return Optional.of(Side.BOTTOM);
    }
    return NO.contains(key) ? Optional.of(Side.TOP) : Optional.empty();
  }

  /** The side that a file's name states for all its rows; the bottom where it states both. */
  public static Optional<Side> inFileName(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    if (BOTTOM_FILE.matcher(name).find()) {
      return Optional.of(Side.BOTTOM);
    }
    return TOP_FILE.matcher(name).find() ? Optional.of(Side.TOP) : Optional.empty();
  }

  private static Pattern wordOf(String words) {
    return Pattern.compile("(?:^|[^a-z])(?:" + words + ")(?:[^a-z]|$)");
  }
}
