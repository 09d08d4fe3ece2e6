package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.part.PartType;
import lowfirst.sheet.body.PartPicture;
import lowfirst.sheet.document.Unparted;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sheet.drawing.Shape.Label.Anchor;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.SortLine;

/** The label of one compartment: its number, how many, what, and what the part looks like. */
final class TrayLabel {
  /** A letter's width, of the type's height, on the safe side of what fonts have. */
  private static final double LETTER = 0.58;

  private static final double EDGE = 1.6;
  private static final double SMALL = 2.1;
  private static final double LEAST = 1.5;

  /** A part drawn smaller than this, its longer side, can't be told from another. */
  private static final double LEAST_PICTURE = 5;

  private final double width;
  private final double height;
  private final List<Shape> shapes = new ArrayList<>();

  private TrayLabel(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** A label of this size in millimetres. */
  static Drawing of(SortLine line, double width, double height) {
    var label = new TrayLabel(width, height);
    Compartment compartment = line.compartment();
    label.frame();
    double big = Math.max(SMALL, Math.min(5, height * 0.2));
    label.put(EDGE, EDGE + big * 0.8, big, Anchor.START, "" + compartment.number());
    label.put(width - EDGE, EDGE + big * 0.8, big, Anchor.END, "× " + compartment.quantity());
    double y = label.lines(EDGE + big + 1, Math.max(SMALL, big * 0.8), name(compartment));
    String small =
        Stream.of(bag(line), ratings(compartment.type()))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" · "));
    if (!small.isEmpty()) {
      y = label.lines(y, SMALL, small);
    }
    label.picture(y, compartment);
    String words = compartment.number() + ": " + compartment.quantity() + " × " + name(compartment);
    return new Drawing(width, height, label.shapes, words);
  }

  private static String bag(SortLine line) {
    return line.bags().isEmpty() ? "" : "bag " + String.join(", ", line.bags());
  }

  /** What tells a part from another of the same value. */
  private static String ratings(PartType type) {
    return Stream.of(type.tolerance(), type.ratedVoltage(), type.ratedPower())
        .flatMap(Optional::stream)
        .map(Object::toString)
        .collect(Collectors.joining(", "));
  }

  /** What a label calls the part, on paper and in text. */
  static String name(Compartment compartment) {
    return StepWording.shortName(compartment.type());
  }

  private void frame() {
    shapes.add(new Shape.Box(0, 0, width, height, 0, Shape.Paint.stroke(new Ink(0x888888), 0.15)));
  }

  private void put(double x, double y, double size, Anchor anchor, String text) {
    shapes.add(new Shape.Label(x, y, size, anchor, Ink.BLACK, text));
  }

  /**
   * Sets a text in lines that fit, a little smaller where that spares a third line for the picture,
   * and as small as need be; returns where the next one may start.
   */
  private double lines(double top, double size, String text) {
    double room = width - 2 * EDGE;
    double fitted = size;
    List<String> lines = broken(text, (int) (room / (fitted * LETTER)));
    while (lines.size() > 2 && fitted > Math.max(LEAST, size * 0.75)) {
      fitted *= 0.9;
      lines = broken(text, (int) (room / (fitted * LETTER)));
    }
    while (fitted > LEAST && top + lines.size() * fitted * 1.2 > height - EDGE) {
      fitted *= 0.9;
      lines = broken(text, (int) (room / (fitted * LETTER)));
    }
    double y = top;
    for (String line : lines) {
      y += fitted * 1.2;
      put(EDGE, y - fitted * 0.3, fitted, Anchor.START, line);
    }
    return y;
  }

  /** Words in lines of at most {@code letters}; a longer word is broken. */
  static List<String> broken(String text, int letters) {
    int most = Math.max(1, letters);
    var lines = new ArrayList<String>();
    String line = "";
    for (String word : Unparted.joined(text).split("\\s+")) {
      String rest = word.replace(Unparted.JOINT, ' ');
      if (!line.isEmpty() && line.length() + 1 + rest.length() > most) {
        lines.add(line);
        line = "";
      }
      while (rest.length() > most) {
        lines.add(rest.substring(0, most));
        rest = rest.substring(most);
      }
      line = line.isEmpty() ? rest : line + " " + rest;
    }
    lines.add(line);
    return lines;
  }

  /** The part below the words, life size or as large as there is room for; left out without any. */
  private void picture(double top, Compartment compartment) {
    Drawing part = PartPicture.of(compartment.type(), compartment.outline(), compartment.marking());
    double room = height - EDGE - top - 0.8;
    double scale =
        Math.min(
            1,
            Math.min(
                room / part.heightMillimetres(), (width - 2 * EDGE) / part.widthMillimetres()));
    double longer = Math.max(part.widthMillimetres(), part.heightMillimetres());
    if (scale < 1 && scale * longer < LEAST_PICTURE) {
      return;
    }
    shapes.addAll(part.scaled(scale).movedTo(EDGE, top + 0.8).shapes());
  }
}
