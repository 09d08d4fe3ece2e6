package lowfirst.sheet.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Place;
import lowfirst.quantity.Source;

/** Boards built in code, for tests of what is drawn and printed. */
public final class SampleBoards {
  private static final Source INVENTED = Source.kit("invented for the test");

  /** An axial body lying flat. */
  public static final BodyOutline AXIAL =
      new BodyOutline("axial", 2.5, 0, 6.3, 2.5, 10.16, 2, INVENTED);

  private SampleBoards() {}

  public static Placement placement(
      String designator, double x, double y, double rotation, Side side) {
    return placement(designator, x, y, rotation, true, side);
  }

  /** Of a list that does not tell how its parts are turned. */
  public static Placement unturned(String designator, double x, double y) {
    return placement(designator, x, y, 0, false, Side.TOP);
  }

  private static Placement placement(
      String designator, double x, double y, double rotation, boolean isTurnKnown, Side side) {
    return new Placement(
        Designator.of(designator),
        x,
        y,
        rotation,
        isTurnKnown,
        side,
        "",
        "",
        "",
        Place.ofLine("placements.csv", 2));
  }

  public static PartType type(PartKind kind, String text) {
    return PartType.named(kind, text, text, "axial");
  }

  public static Item item(PartType type, List<Designator> designators) {
    return new Item(
        designators,
        designators.size(),
        type,
        "",
        OptionalDouble.empty(),
        Item.Fitting.FITTED,
        Place.ofLine("bom.csv", 2));
  }

  /** A board of these placements, axial diodes all, with an outline of 60 by 40 mm. */
  public static Board diodes(Placement... placements) {
    return board(Optional.of(new Board.Size(0, 0, 60, 40)), List.of(placements));
  }

  /** The same of wire links, of which only the holes are known, 10.16 mm apart. */
  public static Board links(Placement... placements) {
    var link = new BodyOutline("wire link", 0.7, 0, 0, 0, 10.16, 2, INVENTED);
    return new Board(
        "driver",
        2,
        Optional.of(new Board.Size(0, 0, 60, 40)),
        List.of(
            item(
                type(PartKind.WIRE_LINK, ""),
                Stream.of(placements).map(Placement::designator).toList())),
        List.of(placements),
        part -> Optional.of(link));
  }

  public static Board board(Optional<Board.Size> size, List<Placement> placements) {
    return new Board(
        "driver",
        2,
        size,
        List.of(
            item(
                type(PartKind.DIODE, "1N4007"),
                placements.stream().map(Placement::designator).distinct().toList())),
        placements,
        part -> Optional.of(AXIAL));
  }

  /** A grid of {@code count} resistors. */
  public static Board grid(int count) {
    var placements = new ArrayList<Placement>();
    for (int i = 0; i < count; i++) {
      placements.add(
          placement("R" + (i + 1), 10 + i % 12 * 13, 10 + i / 12 * 4, i % 3 * 90, Side.TOP));
    }
    return board(Optional.empty(), placements);
  }
}
