package lowfirst.intake.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Designators behind a #, as somebody writes who puts a row out and leaves it standing. */
public final class HashedNames {
  /** So many are named. */
  private static final int NAMED = 6;

  private final List<String> names = new ArrayList<>();
  private Optional<Place> first = Optional.empty();

  /** Looks at a designator in a column of a row. */
  public void see(TableRow row, Column column, String name) {
    if (name.charAt(0) == '#') {
      names.add(name);
      first = first.or(() -> Optional.of(row.place(column)));
    }
  }

  /** That they were read as parts; empty without any. */
  public Optional<Problem> said() {
    boolean one = names.size() == 1;
    String named = Excerpt.of(names, NAMED);
    return first.map(
        place ->
            new Problem(
                Kind.OPTIONAL_PART,
                place,
                named
                    + (one
                        ? " was read as a part of that name"
                        : " were read as parts of those names")
                    + ", though the # may mean that "
                    + (one ? "it is" : "they are")
                    + " not fitted",
                one
                    ? "take the part out if it is not fitted, else delete the #"
                    : "take out the parts that are not fitted, and delete the # of the others"));
  }
}
