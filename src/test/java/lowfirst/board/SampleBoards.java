package lowfirst.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.part.BodyOutline;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Place;
import lowfirst.quantity.Source;

/**
 * Small boards for tests, written as one would list them:
 *
 * <pre>{@code
 * Kit kit = SampleBoards.kit(
 *     SampleBoards.board("driver")
 *         .part("R1 R2", PartKind.RESISTOR, "4k7", 2.5)
 *         .at("R1", 10, 10)
 *         .body("R1", 6.3, 2.5));
 * }</pre>
 */
public final class SampleBoards {
  private final String name;
  private int count = 1;
  private final List<Item> items = new ArrayList<>();
  private final List<Placement> placements = new ArrayList<>();
  private final Map<Designator, BodyOutline> outlines = new LinkedHashMap<>();

  private SampleBoards(String name) {
    this.name = name;
  }

  /** An empty board of this name. */
  public static SampleBoards board(String name) {
    return new SampleBoards(name);
  }

  /** A kit of these boards and nothing else. */
  public static Kit kit(SampleBoards... boards) {
    return kit(List.of(), boards);
  }

  /** The same with substitutes. */
  static Kit kit(List<Swap> swaps, SampleBoards... boards) {
    return new Kit(
        new Settings("sample", Optional.empty(), "", "", ""),
        Stream.of(boards).map(SampleBoards::build).toList(),
        Datasheets.none(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        swaps,
        List.of(),
        Fingerprint.of("0".repeat(64)));
  }

  /** How many are built. */
  public SampleBoards count(int units) {
    count = units;
    return this;
  }

  /** A BOM line with the height in its height column; designators between blanks. */
  public SampleBoards part(String designators, PartKind kind, String text, double height) {
    return line(designators, type(kind, text, ""), "", OptionalDouble.of(height));
  }

  /** A BOM line without a height. */
  public SampleBoards part(String designators, PartKind kind, String text) {
    return line(designators, type(kind, text, ""), "", OptionalDouble.empty());
  }

  /** A BOM line with a package and a description, and no height. */
  public SampleBoards part(
      String designators, PartKind kind, String text, String packageName, String description) {
    return line(designators, type(kind, text, packageName), description, OptionalDouble.empty());
  }

  /** A BOM line of any kind. */
  public SampleBoards line(
      String designators, PartType type, String description, OptionalDouble height) {
    List<Designator> list =
        Stream.of(designators.split(" "))
            .filter(text -> !text.isEmpty())
            .map(Designator::of)
            .toList();
    return item(
        new Item(
            list,
            Math.max(1, list.size()),
            type,
            description,
            height,
            Item.Fitting.FITTED,
            Place.ofLine(name + "/bom.csv", items.size() + 2)));
  }

  /** A whole item. */
  public SampleBoards item(Item item) {
    items.add(item);
    return this;
  }

  /** A place on the top side, not turned. */
  public SampleBoards at(String designator, double x, double y) {
    return at(designator, x, y, 0, Side.TOP);
  }

  /** A place on a side, turned anticlockwise by degrees. */
  public SampleBoards at(String designator, double x, double y, double turned, Side side) {
    placements.add(
        new Placement(
            Designator.of(designator),
            x,
            y,
            turned,
            true,
            side,
            "",
            "",
            "",
            Place.ofLine(name + "/placements.csv", placements.size() + 2)));
    return this;
  }

  /** The body seen from above, its height unknown. */
  public SampleBoards body(String designator, double length, double width) {
    return body(designator, length, width, 0, 0);
  }

  /** The body seen from above with its seated height and the gap under it. */
  public SampleBoards body(
      String designator, double length, double width, double height, double standOff) {
    return outline(
        designator,
        new BodyOutline(
            "body of " + designator,
            height,
            standOff,
            length,
            width,
            0,
            0,
            Source.computed("test")));
  }

  /** The body of a part. */
  public SampleBoards outline(String designator, BodyOutline outline) {
    outlines.put(Designator.of(designator), outline);
    return this;
  }

  /** A part type without value or ratings. */
  public static PartType type(PartKind kind, String text, String packageName) {
    return PartType.named(kind, text, "", packageName);
  }

  /** The board. */
  public Board build() {
    return new Board(
        name,
        count,
        Optional.empty(),
        items,
        placements,
        part -> Optional.ofNullable(outlines.get(part.designator())));
  }
}
