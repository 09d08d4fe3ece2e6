package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Words in a BOM's column of designators, where most have letters and a number: a jack named In, or
 * a heading. They count as names of parts, and that is said unless a position confirms it.
 */
public final class WordNames {
  /** So many are named. */
  private static final int NAMED = 6;

  private final List<Designator> names = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private final List<Place> words = new ArrayList<>();
  private int usual;

  /** Looks at a row whose cell names no part, though something stands in it. */
  public void seeWords(TableRow row) {
    words.add(row.place(Column.DESIGNATORS));
  }

  /** That they name no part; empty where hardly any row does. */
  public Optional<Problem> saidOfWords() {
    int rows = words.size();
    return rows == 0 || rows > usual
        ? Optional.empty()
        : Optional.of(
            new Problem(
                Kind.COLUMN_GUESSED,
                words.get(0),
                rows == 1
                    ? "this was taken for words, not for the name of a part on the board"
                    : "here and in "
                        + (rows - 1)
                        + " more rows words were taken for no name of a part on the board",
                "if they name parts, list them parted by commas"));
  }

  /** Looks at a designator of a row. */
  public void see(TableRow row, Designator name) {
    if (name.isUsual()) {
      usual++;
    } else if (isWord(name.text()) || !row.row().fillsMoreThan(1)) {
      names.add(name);
      places.add(row.place(Column.DESIGNATORS));
    }
  }

  /** Whether a name has letters alone, which nothing tells from a word. */
  static boolean isWord(String text) {
    return text.length() > 1 && text.chars().allMatch(Character::isLetter);
  }

  /** That they were read as parts; empty where all are placed, or names like the others. */
  public Optional<Problem> said(List<Placement> placements) {
    if (names.isEmpty() || names.size() > usual) {
      return Optional.empty();
    }
    var placed = new HashSet<Designator>();
    placements.forEach(placement -> placed.add(placement.designator()));
    var left = new ArrayList<String>();
    Optional<Place> first = Optional.empty();
    for (int i = 0; i < names.size(); i++) {
      if (!placed.contains(names.get(i))) {
        left.add(names.get(i).text());
        Place own = places.get(i);
        first = first.or(() -> Optional.of(own));
      }
    }
    return first.map(place -> said(place, left));
  }

  private static Problem said(Place first, List<String> names) {
    boolean one = names.size() == 1;
    return new Problem(
        Kind.COLUMN_GUESSED,
        first,
        Excerpt.of(names, NAMED)
            + (one
                ? " was taken for the name of a part on the board"
                : " were taken for names of parts on the board"),
        "if that is wrong, delete the line or empty the cell");
  }
}
