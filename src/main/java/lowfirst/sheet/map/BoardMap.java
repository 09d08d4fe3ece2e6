package lowfirst.sheet.map;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.board.Board;
import lowfirst.board.BoardPart;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Label.Anchor;
import lowfirst.sheet.drawing.Shape.Paint;
import lowfirst.sheet.drawing.Shape.Point;
import lowfirst.sheet.wording.Counted;

/**
 * A board to scale, in millimetres: the places that matter now dark and numbered, what is done in
 * grey, the rest faint. Nothing is told by colour alone.
 *
 * <p>A part that has one right way round shows ± beside its number: placement lists don't say which
 * way their rotation starts from, so the map can't show pin 1; the print on the board does. A part
 * is drawn round where its size is not known, or how it is turned.
 */
public final class BoardMap {
  static final double HEAD = 5.5;
  private static final double FOOT = 8;

  /** Room for a line more below. */
  private static final double REMARK = 3.2;

  /** Free space at the sides: half the outline's stroke, and room for numbers at the edge. */
  static final double SIDE = 2;

  /** How maps are drawn on paper. */
  static final PlaceMarks.Style PAPER = new PlaceMarks.Style(2.1, new Ink(0xA8A8A8), 0.15);

  /** Room for the map's own words. */
  private static final double LEAST_WIDTH = 40;

  private final Board board;
  private final BoardView view;
  private final Side seenFrom;
  private final PlaceMarks marks;

  /** What the map has to say of what it can't show. */
  private final List<String> remarks = new ArrayList<>();

  /** Sorted by designator, which is the order of drawing. */
  private final Map<Designator, Placement> placements;

  BoardMap(Board board, Side seenFrom, PlaceMarks.Style style) {
    this.board = board;
    this.view = BoardView.of(board, seenFrom);
    this.seenFrom = seenFrom;
    this.marks = new PlaceMarks(board, view, seenFrom, style);
    this.placements = new LinkedHashMap<>();
    board.parts().stream()
        .flatMap(part -> part.placement().stream())
        .filter(view::isShown)
        .sorted(Comparator.comparing(Placement::designator))
        .forEach(place -> placements.put(place.designator(), place));
    if (placements.values().stream().anyMatch(marks::isRound)) {
      remarks.add("round: size or turn not known");
    }
    if (!view.knowsEdge()) {
      remarks.add("the frame is not the board's edge");
    }
    String away = away(board.parts().stream().map(BoardPart::designator).toList());
    if (!away.isEmpty()) {
      remarks.add("off the board, not shown: " + away);
    }
  }

  /**
   * A map for a screen at arm's length: larger names, stronger lines than on paper. The window that
   * shows it decides how large a name comes out, so it is told how wide that is.
   *
   * @param lit the places to fill now, each under a name of its own, in reading order
   * @param done the places already filled
   * @param seenFrom which side one looks at; from the bottom the board is shown mirrored, as it is
   *     seen when turned over sideways
   */
  public static Drawing forScreen(
      Board board,
      Map<Designator, String> lit,
      Collection<Designator> done,
      Side seenFrom,
      double shownMillimetres) {
    double number = Math.max(1.6, Math.min(4.2, shownMillimetres / 32));
    var screen = new PlaceMarks.Style(number, new Ink(0x8C8C8C), shownMillimetres / 500);
    return new BoardMap(board, seenFrom, screen).drawn(lit, done);
  }

  /** All of it in one drawing. */
  Drawing drawn(Map<Designator, String> lit, Collection<Designator> done) {
    var filled = new HashSet<>(done);
    filled.removeAll(lit.keySet());
    var marked = new HashSet<>(filled);
    marked.addAll(lit.keySet());
    return with(lit, bare(marked), List.of(filled(filled)), done.size()).flat();
  }

  /** How wide a board's map is at real size, its margin included. */
  public static double widthMillimetres(Board board) {
    return new BoardMap(board, Side.TOP, PAPER).width();
  }

  private double width() {
    return Math.max(view.width() + 2 * SIDE, LEAST_WIDTH);
  }

  private double height() {
    return HEAD + view.height() + FOOT + REMARK * remarks.size();
  }

  /** The board with its parts drawn faint, all but {@code except}. */
  Drawing bare(Set<Designator> except) {
    var shapes = new ArrayList<Shape>();
    Shape.Box edge = marks.edge();
    shapes.add(edge);
    shapes.add(corner(edge));
    placements.values().stream()
        .filter(place -> !except.contains(place.designator()))
        .forEach(place -> shapes.add(marks.faint(place)));
    return new Drawing(width(), height(), shapes, heading());
  }

  /** Filled places alone, to be set onto the bare board. */
  Drawing filled(Set<Designator> done) {
    var shapes = new ArrayList<Shape>();
    placed(done).forEach(place -> shapes.add(marks.done(place)));
    return new Drawing(width(), height(), shapes, "filled already");
  }

  /** The bare board, the filled places on it, and the lit ones on top, each under its name. */
  Drawing with(Map<Designator, String> lit, Drawing bare, List<Drawing> filled, int filledPlaces) {
    List<Shape> shapes = marked(lit, bare, filled);
    placed(lit.keySet()).forEach(place -> marks.name(place, lit.get(place.designator()), shapes));
    shapes.add(label(SIDE, 3.4, 2.6, heading()));
    scaleMark(shapes);
    return new Drawing(width(), height(), shapes, words(lit, filledPlaces));
  }

  /** The same without a word in it, and no larger than the board: to be shown small. */
  Drawing wordless(
      Map<Designator, String> lit, Drawing bare, List<Drawing> filled, int filledPlaces) {
    var map = new Drawing(width(), height(), marked(lit, bare, filled), words(lit, filledPlaces));
    Drawing moved = map.movedTo(0, SIDE - HEAD);
    return new Drawing(
        view.width() + 2 * SIDE, view.height() + 2 * SIDE, moved.shapes(), moved.words());
  }

  private List<Shape> marked(Map<Designator, String> lit, Drawing bare, List<Drawing> filled) {
    var shapes = new ArrayList<Shape>();
    shapes.add(new Shape.Stamp(bare, 0, 0, 1));
    filled.stream()
        .filter(layer -> !layer.shapes().isEmpty())
        .forEach(layer -> shapes.add(new Shape.Stamp(layer, 0, 0, 1)));
    placed(lit.keySet()).forEach(place -> marks.lit(place, shapes));
    return shapes;
  }

  /**
   * Where these parts are, in the order of drawing; looked up, so that a map of few costs little.
   */
  private List<Placement> placed(Set<Designator> designators) {
    return designators.stream()
        .filter(placements::containsKey)
        .sorted()
        .map(placements::get)
        .toList();
  }

  private String heading() {
    String side = seenFrom == Side.TOP ? "top" : "bottom, mirrored";
    return board.name() + ": seen from the " + side;
  }

  /** A black triangle in the lower left corner of the top side, on both views the same corner. */
  private Shape corner(Shape.Box edge) {
    double x = seenFrom == Side.TOP ? edge.x() : edge.x() + edge.width();
    double y = edge.y() + edge.height();
    double into = seenFrom == Side.TOP ? 3 : -3;
    return new Shape.Path(
        List.of(new Point(x, y), new Point(x + into, y), new Point(x, y - 3)),
        Shape.Path.Closing.CLOSED,
        Paint.fill(Ink.BLACK));
  }

  /** A length to hold a ruler to, 50 mm where it fits. */
  private void scaleMark(List<Shape> shapes) {
    double length = width() >= 54 ? 50 : 20;
    double y = HEAD + view.height() + 3.5;
    double end = SIDE + length;
    shapes.add(new Shape.Line(SIDE, y, end, y, Paint.stroke(Ink.BLACK, 0.25)));
    for (double x = SIDE; x <= end + 0.01; x += 10) {
      shapes.add(new Shape.Line(x, y - 1.2, x, y + 1.2, Paint.stroke(Ink.BLACK, 0.25)));
    }
    String mark = String.format(Locale.ROOT, "%.0f mm on the board", length);
    shapes.add(label(SIDE, y + 3.6, 2.2, mark));
    double line = y + 3.6;
    for (String remark : remarks) {
      line += REMARK;
      shapes.add(label(SIDE, line, 2.2, remark));
    }
  }

  /** Which of these parts are placed too far off the board to be shown. */
  private String away(Collection<Designator> designators) {
    return designators.stream()
        .filter(designator -> board.find(designator).flatMap(BoardPart::placement).isPresent())
        .filter(designator -> !placements.containsKey(designator))
        .map(Designator::text)
        .collect(Collectors.joining(", "));
  }

  private static Shape label(double x, double y, double size, String text) {
    return new Shape.Label(x, y, size, Anchor.START, Ink.BLACK, text);
  }

  private String words(Map<Designator, String> lit, int filledPlaces) {
    String places =
        lit.entrySet().stream()
            .map(place -> place.getValue() + " at " + place.getKey())
            .collect(Collectors.joining(", "));
    String unplaced =
        lit.keySet().stream()
            .filter(designator -> board.find(designator).flatMap(BoardPart::placement).isEmpty())
            .map(Designator::text)
            .collect(Collectors.joining(", "));
    String away = away(lit.keySet());
    String round =
        placed(lit.keySet()).stream()
            .filter(marks::isRound)
            .map(place -> place.designator().text())
            .collect(Collectors.joining(", "));
    return "Board "
        + heading()
        + (places.isEmpty() ? "; no place marked" : "; marked: " + places)
        + (filledPlaces == 0 ? "" : "; filled already: " + Counted.of(filledPlaces, "place"))
        + (round.isEmpty() ? "" : "; drawn round, size or turn not known: " + round)
        + (away.isEmpty() ? "" : "; off the board, not shown: " + away)
        + (unplaced.isEmpty() ? "" : "; not in the placement list: " + unplaced);
  }
}
