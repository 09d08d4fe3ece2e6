package lowfirst.intake.bom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.LostNames;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.Lengths;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.HashedNames;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.WordNames;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Quantity;

/** Reads the rows of a BOM as items. */
public final class BomReader {
  private static final Pattern SIGNS = Pattern.compile("[/&+]");

  private static final Pattern COUNT =
      Pattern.compile(
          "(?iu)[x×]?\\s*([0-9]{1,7})(?:[.,]0+)?\\s*"
              + "(?:x|×|pcs?\\.?|pieces?|st(?:k|ück)?\\.?|off|each|ea\\.?|pz\\.?|szt\\.?|ks)?\\s*(?:\\(.*\\))?");

  private static final Pattern COUNTED_VALUE = Pattern.compile("([1-9]\\d?)\\s?[x×]\\s?(?=\\d)");

  /** One or one thousand: nothing else tells where no designators are named. */
  private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}[.,]000(?!\\d)");

  private final PartTypeReader partTypes;
  private final Table table;
  private final List<Item> items = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final LineFitting fitting;

  /** What the placement list calls parts by words, or by words behind a designator. */
  private final Map<String, Designator> placedWords = new HashMap<>();

  /** Names with a sign that parts designators elsewhere: L1/L2 of one choke. */
  private final Set<String> placedWithSigns = new HashSet<>();

  private BomReader(Table table, List<Placement> placements) {
    this.table = table;
    placements.forEach(this::seePlaced);
    this.partTypes = new PartTypeReader(table.rows(), placements);
    this.fitting = new LineFitting(table, problems);
  }

  private void seePlaced(Placement placement) {
    Designator designator = placement.designator();
    String cell = placement.place().cell();
    if (cell.indexOf(' ') > 0 && cell.startsWith(designator + " ")) {
      placedWords.put(cell, designator);
    }
    if (designator.isUsual()) {
      return;
    }
    if (designator.text().indexOf(' ') > 0) {
      placedWords.put(designator.text(), designator);
    }
    if (SIGNS.matcher(designator.text()).find()) {
      placedWithSigns.add(designator.text());
    }
  }

  /** Items and what is wrong with single cells. */
  public record Items(List<Item> items, List<Problem> problems) {}

  /**
   * The items of a table whose columns are known; what the BOM does not say of a part is taken from
   * its placement.
   */
  public static Items in(Table table, List<Placement> placements) {
    var reader = new BomReader(table, placements);
    reader.readRows(placements);
    reader.fitting.sayHeadings();
    reader.sayNameless();
    if (reader.partTypes.borrows()) {
      reader.problems.add(
          new Problem(
              Kind.COLUMN_GUESSED,
              Place.ofFile(table.file()),
              "values or packages that are missing here were taken from the placement list",
              "if they are wrong, add them to the BOM"));
    }
    return new Items(SocketLines.last(reader.items), reader.problems);
  }

  /** A list of what to buy, whose column for designators stayed empty. */
  private void sayNameless() {
    boolean headed = !items.isEmpty() && table.rows().get(0).has(Column.DESIGNATORS);
    if (headed && items.stream().allMatch(item -> item.designators().isEmpty())) {
      problems.add(
          table
              .rows()
              .get(0)
              .problem(
                  Kind.NOT_PLACED,
                  Column.DESIGNATORS,
                  "from here on no row names parts on the board, such as R1, so nobody knows where"
                      + " they go",
                  "export the BOM with its designators, or write them in"));
    }
  }

  private void readRows(List<Placement> placements) {
    List<TableRow> rows = table.rows();
    var lists = new ArrayList<DesignatorList>(rows.size());
    rows.forEach(row -> lists.add(designators(row)));
    UnitNames units = UnitNames.of(rows, lists, placements);
    var joined = new HashSet<Designator>();
    var hashed = new HashedNames();
    var worded = new WordNames();
    for (int i = 0; i < rows.size(); i++) {
      DesignatorList list = lists.get(i);
      sayWhatWasRead(rows.get(i), list);
      for (Designator name : list.designators()) {
        hashed.see(rows.get(i), Column.DESIGNATORS, name.text());
        worded.see(rows.get(i), name);
      }
      if (list.isCapitals()) {
        worded.seeWords(rows.get(i));
      }
      if (list.designators().stream().noneMatch(units.parts()::containsKey)) {
        readRow(rows.get(i), list);
        continue;
      }
      List<Designator> left = withoutNamed(rows.get(i), units, list.designators(), joined);
      if (!left.isEmpty()) {
        readRow(rows.get(i), list.naming(left));
      }
    }
    hashed.said().ifPresent(problems::add);
    worded.said(placements).ifPresent(problems::add);
    worded.saidOfWords().ifPresent(problems::add);
  }

  private DesignatorList designators(TableRow row) {
    String text = row.text(Column.DESIGNATORS);
    if (placedWithSigns.contains(text) || placedWords.containsKey(text)) {
      return DesignatorList.of(placedWords.getOrDefault(text, Designator.of(text)));
    }
    OpenRange read = OpenRange.of(row.text(Column.DESIGNATORS), row.text(Column.QUANTITY));
    read.doubt()
        .ifPresent(
            doubt ->
                problems.add(
                    row.problem(
                        Kind.COLUMN_AMBIGUOUS,
                        Column.DESIGNATORS,
                        doubt,
                        "part two designators with a comma, or write a range with a dash")));
    return read.list().withWords(placedWords);
  }

  /** Of parts whose units were joined, those that no row above has named. */
  private List<Designator> withoutNamed(
      TableRow row, UnitNames units, List<Designator> listed, Set<Designator> joined) {
    var left = new ArrayList<Designator>();
    for (Designator part : units.joined(listed)) {
      boolean ofUnits = units.parts().containsValue(part);
      boolean named = ofUnits && !joined.add(part);
      if (ofUnits) {
        problems.add(
            row.problem(
                named ? Kind.ROW_IGNORED : Kind.COLUMN_GUESSED,
                Column.DESIGNATORS,
                named
                    ? "a line above names " + part + ", of which this is a unit"
                    : units.said(part),
                "if they are parts of their own, give each a position and count it"));
      }
      if (!named) {
        left.add(part);
      }
    }
    return left;
  }

  private void readRow(TableRow row, DesignatorList list) {
    PartType type = partTypes.read(row, list, problems);
    OptionalInt quantity = quantity(row, list, type);
    int named = list.designators().size();
    var item =
        new Item(
            list.designators(),
            quantity.orElse(Math.max(1, named)),
            type,
            description(row, list),
            height(row),
            fitting.of(row, list, quantity, type),
            row.place(Column.DESIGNATORS));
    items.add(item);
    if (item.isFitted()) {
      fitting.sayLeftOpen(row, list);
    }
    if (named > 0 && item.quantity() != named && item.isFitted()) {
      problems.add(disagrees(row, item.quantity(), named));
    }
  }

  private static Problem disagrees(TableRow row, int quantity, int named) {
    return row.problem(
        Kind.QUANTITY_DISAGREES,
        Column.QUANTITY,
        "the quantity is "
            + quantity
            + ", but "
            + (named == 1 ? "one designator is" : named + " designators are")
            + " named",
        "correct whichever is wrong");
  }

  private void sayWhatWasRead(TableRow row, DesignatorList list) {
    for (String fault : list.faults()) {
      problems.add(
          row.problem(
              Kind.DESIGNATOR_UNREADABLE,
              Column.DESIGNATORS,
              fault,
              "list the designators one by one, parted by commas"));
    }
    for (String remark : list.remarks()) {
      problems.add(
          row.problem(
              Kind.COLUMN_GUESSED,
              Column.DESIGNATORS,
              remark,
              "if that is wrong, part the designators with commas"));
    }
    String lost = LostNames.first(list.otherText());
    if (!lost.isEmpty()) {
      problems.add(
          row.problem(
              Kind.DESIGNATOR_UNREADABLE,
              Column.DESIGNATORS,
              "\"" + list.otherText() + "\" was taken for words, though " + lost + " stands in it",
              row.has(Column.VALUE)
                  ? "list the designators one by one, parted by commas"
                  : "list the designators one by one, parted by commas, and give values a column"
                      + " of their own"));
    }
    if (list.designators().isEmpty() && list.empties() > 0) {
      problems.add(
          row.problem(
              Kind.DESIGNATOR_UNREADABLE,
              Column.DESIGNATORS,
              "there are commas but no designators",
              "name the parts of this line on the board, or delete the line"));
    }
  }

  /** All further words; a maker's name says whose datasheet counts. */
  private static String description(TableRow row, DesignatorList list) {
    return Stream.of(list.otherText(), row.text(Column.DESCRIPTION), row.text(Column.MAKER))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining("; "));
  }

  /** How many the line asks for; empty when it does not say so in whole numbers. */
  private OptionalInt quantity(TableRow row, DesignatorList list, PartType type) {
    String text = row.text(Column.QUANTITY);
    if (Cells.isNone(text)) {
      return list.counted() > 0 ? OptionalInt.of(list.counted()) : countInValue(type);
    }
    Matcher count = COUNT.matcher(text);
    boolean thousands = list.designators().isEmpty() && THOUSANDS.matcher(text).lookingAt();
    if (count.matches() && !thousands) {
      return OptionalInt.of(Integer.parseInt(count.group(1)));
    }
    problems.add(
        row.problem(
            Kind.CELL_UNREADABLE,
            Column.QUANTITY,
            "\"" + text + "\" is no whole number of parts",
            list.designators().isEmpty()
                ? "write how many pieces you need, here 1 was taken"
                : "write a whole number, here the designators were counted"));
    return OptionalInt.empty();
  }

  /** 2x 470 µF; of what has several elements in one body that is no count. */
  private static OptionalInt countInValue(PartType type) {
    Matcher count = COUNTED_VALUE.matcher(type.text());
    boolean single =
        type.kind() == PartKind.RESISTOR
            || type.kind() == PartKind.INDUCTOR
            || type.kind().isCapacitor();
    return single && type.value().isPresent() && count.lookingAt()
        ? OptionalInt.of(Integer.parseInt(count.group(1)))
        : OptionalInt.empty();
  }

  private OptionalDouble height(TableRow row) {
    String text = row.text(Column.HEIGHT);
    if (Cells.isNone(text)) {
      return OptionalDouble.empty();
    }
    String unit = HeaderUnit.of(row.headerOf(Column.HEIGHT)).orElse("mm");
    Reading<Quantity> height = Lengths.read(text, unit);
    if (height.value().isEmpty()) {
      problems.add(Cells.problem(row, Column.HEIGHT, height));
      return OptionalDouble.empty();
    }
    double millimetres = height.value().get().asDouble();
    if (!(millimetres > 0) || !(millimetres < 500)) {
      problems.add(
          row.problem(
              Kind.OUT_OF_RANGE,
              Column.HEIGHT,
              "a part is not " + height.value().get() + " high",
              "write the height of the seated part above the board, below 500 mm"));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(millimetres);
  }
}
