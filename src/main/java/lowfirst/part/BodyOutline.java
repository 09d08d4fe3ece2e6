package lowfirst.part;

import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.quantity.Source;

/**
 * The body of a part as it sits on the board: one row of the package table.
 *
 * @param name the outline's name, for example {@code TO-220 standing}
 * @param seatedHeightMillimetres top of the properly seated part above the board, stand-off
 *     included; 0 when not known, and then only {@link #height()} tells
 * @param standOffMillimetres gap under the body, included in the height; zero when it rests on the
 *     board
 * @param lengthMillimetres body length seen from above, along the leads' row; 0 when not known
 * @param widthMillimetres body width seen from above; 0 when not known
 * @param pitchMillimetres distance of the outermost leads, or 0 when the builder bends them
 * @param pins number of leads; 0 when it varies
 * @param source where the height stands
 */
public record BodyOutline(
    String name,
    double seatedHeightMillimetres,
    double standOffMillimetres,
    double lengthMillimetres,
    double widthMillimetres,
    double pitchMillimetres,
    int pins,
    Source source) {

  public BodyOutline {
    if (!(seatedHeightMillimetres >= 0) || !(seatedHeightMillimetres < 500)) {
      throw new IllegalArgumentException(name + ": seated height " + seatedHeightMillimetres);
    }
  }

  /** The seated height, if it is known; a name may tell the body and not its height. */
  public OptionalDouble height() {
    return seatedHeightMillimetres > 0
        ? OptionalDouble.of(seatedHeightMillimetres)
        : OptionalDouble.empty();
  }

  /** Whether the height stands in for one that nobody stated; sheets say so. */
  public boolean isAssumed() {
    return source.origin() == Source.Origin.ASSUMED;
  }

  /** Body length and width, if both are known. */
  public Optional<BodySize> body() {
    return lengthMillimetres > 0 && widthMillimetres > 0
        ? Optional.of(new BodySize(lengthMillimetres, widthMillimetres))
        : Optional.empty();
  }

  /** The distance of the outermost leads, if it is fixed. */
  public OptionalDouble pitch() {
    return pitchMillimetres > 0 ? OptionalDouble.of(pitchMillimetres) : OptionalDouble.empty();
  }

  /** A body seen from above, unrotated. */
  public record BodySize(double lengthMillimetres, double widthMillimetres) {
    /** Whether it covers the same when it is turned by a right angle. */
    public boolean isSquare() {
      return lengthMillimetres == widthMillimetres;
    }
  }
}
