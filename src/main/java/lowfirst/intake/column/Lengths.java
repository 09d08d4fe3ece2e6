package lowfirst.intake.column;

import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** Lengths in cells, whose unit stands in the cell, the header, or before the table. */
public final class Lengths {
  private Lengths() {}

  /** The length that {@code text} states, a bare number counted in {@code unit}. */
  public static Reading<Quantity> read(String text, String unit) {
    Reading<Quantity> bare = Quantity.parse(text, Dimension.LENGTH);
    return bare.isRead() && PlainNumber.isBare(text) && !unit.equals("mm")
        ? Quantity.parse(text.strip() + " " + unit, Dimension.LENGTH)
        : bare;
  }

  /** Whether a text is a unit of length. */
  public static boolean isUnit(String unit) {
    return Quantity.parse("1 " + unit, Dimension.LENGTH).isRead();
  }

  /** How many millimetres a unit is long. */
  public static double millimetres(String unit) {
    return Quantity.parse("1 " + unit, Dimension.LENGTH).orThrow().asDouble();
  }
}
