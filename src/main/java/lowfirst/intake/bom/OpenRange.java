package lowfirst.intake.bom;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.column.WholeNumber;

/**
 * {@code R25 a R27}, which is a range in one language and two designators in another: the quantity
 * tells.
 *
 * @param list the designators as they were taken
 * @param doubt what is as likely, where the quantity tells neither
 */
record OpenRange(DesignatorList list, Optional<String> doubt) {
  private static final Pattern A =
      Pattern.compile("(?i)\\b(\\p{L}{1,4})(\\d{1,6})\\s+a\\s+(?=\\1(\\d{1,6})\\b)");

  /** The designators of a cell, of which the row has this quantity. */
  static OpenRange of(String cell, String quantity) {
    if (cell.indexOf(" a ") < 0 && cell.indexOf(" A ") < 0) {
      return new OpenRange(DesignatorList.parse(cell), Optional.empty());
    }
    DesignatorList each = DesignatorList.parse(cell);
    Matcher a = A.matcher(cell);
    DesignatorList range = DesignatorList.parse(a.replaceAll("$1$2 - "));
    int wanted = WholeNumber.in(quantity).orElse(each.counted());
    boolean alike = range.designators().equals(each.designators()) || !range.faults().isEmpty();
    if (alike || wanted == each.designators().size()) {
      return new OpenRange(each, Optional.empty());
    }
    return wanted == range.designators().size()
        ? new OpenRange(range, Optional.empty())
        : new OpenRange(
            each,
            Optional.of(
                "\""
                    + cell
                    + "\" was read as "
                    + each.designators().size()
                    + " designators, but it may be a range, which makes "
                    + range.designators().size()));
  }
}
