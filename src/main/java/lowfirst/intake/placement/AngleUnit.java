package lowfirst.intake.placement;

import java.util.Optional;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/** What the bare numbers of a column of angles count; told by all of them. */
public enum AngleUnit {
  DEGREE(1, ""),
  TENTH(10, "divided by 10"),
  HUNDREDTH(100, "divided by 100"),
  THOUSANDTH(1000, "divided by 1000"),
  RADIAN(Math.PI / 180, "read as radians"),
  QUARTER(1.0 / 90, "read as quarter turns");

  /** A fourth quarter turn is none. */
  private static final int MOST_QUARTERS = 3;

  /** No export turns a part more than twice. */
  private static final double MOST_DEGREES = 720;

  private static final double MOST_RADIANS = 2 * Math.PI + 0.01;

  /** Parts that stand askew are turned by a multiple of it. */
  private static final double USUAL = 15;

  private static final double NEARLY = 0.3;

  /** Degrees and the parts of one, each a tenth of the one before. */
  private static final AngleUnit[] PARTS = {DEGREE, TENTH, HUNDREDTH, THOUSANDTH};

  /** Nearly all parts are turned by a multiple of it. */
  private static final double EIGHTH = 45;

  private final double inDegree;
  private final String words;

  AngleUnit(double inDegree, String words) {
    this.inDegree = inDegree;
    this.words = words;
  }

  /** Whether an angle in degrees is a multiple of an eighth turn, as nearly all of a list are. */
  public static boolean isEighth(double degrees) {
    return degrees % EIGHTH == 0;
  }

  double degrees(double number) {
    double degrees = number / inDegree;
    // A list writes radians with few digits.
    return this == RADIAN ? Math.rint(degrees / USUAL) * USUAL : degrees;
  }

  /** The numbers of a column. */
  static final class Seen {
    private double widest;
    private TableRow widestRow;

    /** How many turn by eighths: counted in degrees, in tenths, hundredths, thousandths of one. */
    private final int[] eighths = new int[PARTS.length];

    private boolean areRadians = true;
    private boolean areQuarters = true;

    void see(TableRow row, double number) {
      double size = Math.abs(number);
      if (size > widest) {
        widest = size;
        widestRow = row;
      }
      countEighths(size);
      areQuarters = areQuarters && size <= MOST_QUARTERS && size == Math.rint(size);
      areRadians = areRadians && size <= MOST_RADIANS && mayBeRadian(size);
    }

    /** What is no eighth turn in one unit is none in a smaller one. */
    private void countEighths(double size) {
      for (int i = 0; i < PARTS.length && size > 0 && isEighth(size / PARTS[i].inDegree); i++) {
        eighths[i]++;
      }
    }

    private static boolean mayBeRadian(double size) {
      double degrees = Math.toDegrees(size);
      return Math.abs(degrees - Math.rint(degrees / USUAL) * USUAL) < NEARLY;
    }

    AngleUnit unit() {
      if (widest > MOST_DEGREES) {
        AngleUnit part =
            widest <= 3600
                ? TENTH
                : widest <= 36_000 ? HUNDREDTH : widest <= 360_000 ? THOUSANDTH : DEGREE;
        // A part turned twice round and more stands among others turned by eighths.
        return eighths[part.ordinal()] * 2 < eighths[DEGREE.ordinal()] ? DEGREE : part;
      }
      if (areQuarters && widest > 0) {
        return QUARTER;
      }
      return areRadians && widest > 0 ? RADIAN : DEGREE;
    }

    /** That the angles were not taken for degrees; empty where they were. */
    Optional<Problem> said() {
      AngleUnit unit = unit();
      return unit == DEGREE
          ? Optional.empty()
          : Optional.of(
              widestRow.problem(
                  Kind.COLUMN_GUESSED,
                  Column.ROTATION,
                  "the widest of the angles is \""
                      + widestRow.text(Column.ROTATION)
                      + "\", so all were "
                      + unit.words,
                  "if that is wrong, write degrees, such as 90"));
    }
  }
}
