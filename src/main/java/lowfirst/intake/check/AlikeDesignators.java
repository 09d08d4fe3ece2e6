package lowfirst.intake.check;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.problem.Place;

/**
 * Designators of one table that the other lacks, but has spelt otherwise: {@code Led1} and {@code
 * LED1}, {@code R01} and {@code R1}, {@code J-3} and {@code J3}, {@code J2 FAN} or {@code J2_FAN}
 * and {@code J2}. Only a hint: they may be two parts.
 *
 * @param ofBom those that only the BOM names, by what is left of their spelling
 * @param ofPlacements those that are only placed
 */
record AlikeDesignators(Map<String, Alike> ofBom, Map<String, Alike> ofPlacements) {

  private static final Pattern WITH_NAME =
      Pattern.compile("(\\p{L}{1,4}\\d{1,5})(?:[\\s_]+\\S.*|-\\d{1,2})");

  /** What a panel makes of the designators of the boards on it. */
  private static final Pattern COPY = Pattern.compile("\\p{L}{1,4}\\d{1,5}[_-]\\d{1,2}");

  /** Behind the key of a designator that carries a name. */
  private static final String NAMED = " …";

  /** Where a designator stands; {@code alone} unless others are spelt nearly so, too. */
  record Alike(Designator designator, Place place, boolean alone) {}

  static AlikeDesignators of(List<BoardPart> parts) {
    var alike = new AlikeDesignators(new HashMap<>(), new HashMap<>());
    for (BoardPart part : parts) {
      if (part.placement().isEmpty()) {
        part.item().ifPresent(item -> add(part, item.place(), alike.ofBom));
      } else if (part.item().isEmpty()) {
        add(part, part.placement().get().place(), alike.ofPlacements);
      }
    }
    return alike;
  }

  private static void add(BoardPart part, Place place, Map<String, Alike> alike) {
    String text = part.designator().text();
    var one = new Alike(part.designator(), place, true);
    add(bare(text), one, alike);
    stem(text).ifPresent(stem -> add(bare(stem) + NAMED, one, alike));
  }

  private static void add(String key, Alike one, Map<String, Alike> alike) {
    alike.merge(key, one, (first, next) -> new Alike(first.designator(), first.place(), false));
  }

  /** What stands before a name, as J2 before FAN; empty where no designator does. */
  private static Optional<String> stem(String text) {
    Matcher named = WITH_NAME.matcher(text);
    return named.matches() ? Optional.of(named.group(1)) : Optional.empty();
  }

  /** The placed designator that was probably meant, in words that go on from a message. */
  String placed(Designator inBom) {
    String hint = hint(inBom, ofPlacements);
    Alike named = ofPlacements.get(bare(inBom.text()) + NAMED);
    boolean several =
        hint.isEmpty()
            && named != null
            && !named.alone()
            && COPY.matcher(named.designator().text()).matches();
    return several
        ? "; "
            + named.designator()
            + " and others like it are placed, as on a panel: if so, export the list of one board"
        : hint;
  }

  /** The designator of the BOM that was probably meant. */
  String inBom(Designator placed) {
    return hint(placed, ofBom);
  }

  private static String hint(Designator designator, Map<String, Alike> others) {
    String text = designator.text();
    Optional<Alike> same = Optional.ofNullable(others.get(bare(text)));
    return same.or(() -> Optional.ofNullable(others.get(bare(text) + NAMED)))
        .or(() -> stem(text).map(stem -> others.get(bare(stem))))
        .filter(Alike::alone)
        .map(
            other ->
                "; " + designator + " is probably " + other.designator() + " at " + other.place())
        .orElse("");
  }

  /** In capitals, without signs between letters and digits, and without leading zeros. */
  private static String bare(String designator) {
    return designator
        .toUpperCase(Locale.ROOT)
        .replaceAll("(?<=\\p{L})[\\s._-]+(?=\\d)", "")
        .replaceAll("(?<!\\d)0+(?=\\d)", "");
  }
}
