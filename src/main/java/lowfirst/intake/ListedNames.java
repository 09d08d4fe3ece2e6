package lowfirst.intake;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The names that a table gives to its rows. Other tables may write them in capitals or small
 * letters: what they mean is given back as the table has it.
 */
final class ListedNames {
  private final Set<String> names;

  private ListedNames(Set<String> names) {
    this.names = names;
  }

  static <T> ListedNames of(List<T> rows, Function<T, String> name) {
    var names = new LinkedHashSet<String>();
    rows.forEach(row -> names.add(name.apply(row)));
    return new ListedNames(names);
  }

  /** The one name of a table with one row; empty of any other. */
  String only() {
    return names.size() == 1 ? names.iterator().next() : "";
  }

  /** The name that is meant; as it is written where none is, or where two differ only in case. */
  String meantBy(String written) {
    if (names.contains(written)) {
      return written;
    }
    List<String> alike = names.stream().filter(written::equalsIgnoreCase).toList();
    return alike.size() == 1 ? alike.get(0) : written;
  }
}
