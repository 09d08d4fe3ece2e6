package lowfirst.intake.placement;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.DesignatorSpelling;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.intake.table.Table;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * What the designator cells of a placement list name where words stand behind the designator:
 * {@code J2 FAN1} is J2, unless another cell begins with J2, too. Such words are of letters; {@code
 * C 2} is spelt apart.
 */
final class PlacedNames {
  /** So many are named. */
  private static final int NAMED = 3;

  private static final String ONE = "[A-Z]{1,4}\\d{1,4}";

  private static final Pattern WORDS_BEHIND =
      Pattern.compile("(" + ONE + ")\\s+(?=.*\\p{L}).+", Pattern.DOTALL);

  /** Of several parts, whatever words follow: Q1/Q2, R1 + R2, Q1-Q4; or nothing but such: R1 R2. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "(%1$s)(?:\\s*[/&+,;]\\s*(%1$s)|\\s*[-–]\\s*([A-Z]{1,4})\\d{1,4}|\\s+(%1$s)(?=(\\s+%1$s)*$))"
                  .formatted(ONE)
              + "(?![\\p{L}\\p{N}])");

  /** A name of one part with two uses. */
  private static final Pattern STROKES = Pattern.compile("%1$s(/%1$s)+".formatted(ONE));

  private final Map<String, String> read = new LinkedHashMap<>();
  private Optional<Place> first = Optional.empty();

  private PlacedNames() {}

  /** The names of all rows. */
  static PlacedNames in(Table table) {
    var names = new PlacedNames();
    var begun = new HashMap<String, Set<String>>();
    for (TableRow row : table.rows()) {
      String cell = row.text(Column.DESIGNATOR);
      if (cell.indexOf(' ') > 0) {
        firstOf(cell)
            .ifPresent(one -> begun.computeIfAbsent(one, none -> new HashSet<>()).add(cell));
      }
    }
    if (begun.isEmpty()) {
      return names;
    }
    for (TableRow row : table.rows()) {
      String cell = row.text(Column.DESIGNATOR);
      if (begun.containsKey(cell)) {
        begun.get(cell).add(cell);
      }
    }
    for (TableRow row : table.rows()) {
      String cell = row.text(Column.DESIGNATOR);
      Optional<String> one = firstOf(cell).filter(name -> begun.get(name).size() == 1);
      if (one.isPresent()) {
        names.read.put(cell, one.get());
        names.first = names.first.or(() -> Optional.of(row.place(Column.DESIGNATOR)));
      }
    }
    return names;
  }

  private static Optional<String> firstOf(String cell) {
    Matcher words = WORDS_BEHIND.matcher(cell);
    return words.matches() && isKnown(words.group(1)) && !areSeveral(cell)
        ? Optional.of(words.group(1))
        : Optional.empty();
  }

  /** The designator that a cell names. */
  Designator of(String cell) {
    return Designator.of(DesignatorList.spelt(read.getOrDefault(cell, cell)));
  }

  /** Whether a cell names several parts, which can't all have one position. */
  static boolean areSeveral(String cell) {
    if (DesignatorSpelling.isPlain(cell) || STROKES.matcher(cell).matches()) {
      return false;
    }
    Matcher several = SEVERAL.matcher(cell);
    if (!several.lookingAt() || !isKnown(several.group(1))) {
      return false;
    }
    String second = several.group(2) != null ? several.group(2) : several.group(4);
    return second != null ? isKnown(second) : several.group(1).matches(several.group(3) + "\\d+");
  }

  private static boolean isKnown(String designator) {
    return PartKindWords.byLetters(Designator.of(designator).prefix()).isPresent();
  }

  /** Which words were passed over; empty without any. */
  Optional<Problem> said() {
    List<String> names = read.keySet().stream().map(name -> "\"" + name + "\"").toList();
    return first.map(
        place ->
            new Problem(
                Kind.COLUMN_GUESSED,
                place,
                "of "
                    + Excerpt.of(names, NAMED)
                    + " the designator in front was read, the words behind it were not",
                "if the words belong to the name, write it without blanks"));
  }
}
