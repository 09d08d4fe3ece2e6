package lowfirst.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.bom.PartTypeReader;
import lowfirst.intake.cell.Cells;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.kind.LineCells;
import lowfirst.intake.kind.PartOfLine;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Parts that have a position and no BOM line. Beside a BOM those are told that their value, package
 * or letters in the placement list show to be holes or marks of the board, or that the list itself
 * leaves out; any other such part is a fault of one of the lists. Without a BOM the list tells all.
 */
final class UnlistedParts {
  /** So many are named. */
  private static final int NAMED = 6;

  /** What was drawn onto the board and never got a number: REF**. */
  private static final String UNNUMBERED = "**";

  /** Letters and a number, which one of the two may follow: R12, U$4, LED_RX. */
  private static final Pattern USUAL =
      Pattern.compile("(?iU)\\p{L}{1,5}([_$.-]?\\d{1,4}\\p{L}?|\\d*[_-]\\w+|\\*+|\\?)?");

  /** What tells of a part: its value, its package, and the letters of its designator. */
  private record Told(
      String value,
      String packageName,
      String description,
      String letters,
      boolean numbered,
      Item.Fitting fitting) {
    PartType type() {
      PartType type =
          PartOfLine.read(LineCells.placed(value, packageName, description, letters)).type();
      return numbered || type.kind() != PartKind.UNKNOWN ? type : type.with(PartKind.BOARD_FEATURE);
    }
  }

  private final Map<Told, List<Placement>> parts = new LinkedHashMap<>();

  private UnlistedParts(Board board, Set<Designator> leftOut) {
    // The order of rows tells nothing.
    board.parts().stream()
        .filter(part -> part.item().isEmpty())
        .flatMap(part -> part.placement().stream())
        .sorted(
            Comparator.comparingInt((Placement p) -> p.designator().text().length())
                .thenComparing(p -> p.designator().text()))
        .forEach(
            placement ->
                parts
                    .computeIfAbsent(told(placement, leftOut), none -> new ArrayList<>())
                    .add(placement));
  }

  private static Told told(Placement placement, Set<Designator> leftOut) {
    return new Told(
        value(placement),
        text(placement.packageText()),
        text(placement.descriptionText()),
        PartTypeReader.letters(placement.designator()),
        !placement.designator().text().endsWith(UNNUMBERED),
        fitting(placement, leftOut));
  }

  private static Item.Fitting fitting(Placement placement, Set<Designator> leftOut) {
    if (leftOut.contains(placement.designator())) {
      return Item.Fitting.NOT_FITTED;
    }
    return FittingWords.areAll(placement.valueText()) ? Item.Fitting.OPTIONAL : Item.Fitting.FITTED;
  }

  /** Some name parts by what they are: 2N3904, 47uF 35V. */
  private static String value(Placement placement) {
    String value = text(placement.valueText());
    String name = placement.designator().text();
    return value.isEmpty() && !USUAL.matcher(name).matches() ? name : value;
  }

  private static String text(String cell) {
    return Cells.isNone(cell) ? "" : cell;
  }

  /** Lines for those of them that are told. */
  static List<Item> told(Board board, Set<Designator> leftOut) {
    boolean alone = board.items().isEmpty();
    var items = new ArrayList<Item>();
    new UnlistedParts(board, leftOut)
        .parts.forEach(
            (told, placed) -> {
              PartType type = told.type();
              if (alone
                  || told.fitting() == Item.Fitting.NOT_FITTED
                  || type.kind() == PartKind.BOARD_FEATURE) {
                items.add(
                    new Item(
                        placed.stream().map(Placement::designator).toList(),
                        placed.size(),
                        type,
                        told.description(),
                        OptionalDouble.empty(),
                        told.fitting(),
                        placed.get(0).place()));
              }
            });
    return items;
  }

  /** That parts were taken for holes or marks; empty without any. */
  static Optional<Problem> said(List<Item> told) {
    List<Item> features =
        told.stream()
            .filter(item -> item.isFitted() && item.partType().kind() == PartKind.BOARD_FEATURE)
            .toList();
    boolean one = features.stream().mapToInt(item -> item.designators().size()).sum() == 1;
    return features.stream()
        .findFirst()
        .map(
            first ->
                new Problem(
                    Kind.COLUMN_GUESSED,
                    first.place(),
                    names(features)
                        + (one
                            ? ", which no BOM line names, was"
                            : ", which no BOM line names, were")
                        + " taken for holes or marks of the board, where nothing is soldered in",
                    "add to the BOM what is a part"));
  }

  /** That the list calls parts optional; empty where it calls none so. */
  static Optional<Problem> saidOptional(List<Item> told) {
    List<Item> open =
        told.stream().filter(item -> item.fitting() == Item.Fitting.OPTIONAL).toList();
    return open.stream()
        .findFirst()
        .map(
            first ->
                new Problem(
                    Kind.OPTIONAL_PART,
                    first.place(),
                    "the placement list leaves it open whether to fit "
                        + names(open)
                        + " (\""
                        + first.partType().text()
                        + "\"); all counts as fitted",
                    "decide, and delete the rows of what you don't fit"));
  }

  /** The first of their names. */
  private static String names(List<Item> items) {
    return Excerpt.of(items.stream().flatMap(i -> i.designators().stream()).toList(), NAMED);
  }
}
