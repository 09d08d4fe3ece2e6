package lowfirst.board;

import lowfirst.problem.Place;

/**
 * Where one designator sits, seen from the component side of the top.
 *
 * @param designator which one
 * @param xMillimetres to the right, in the file's own origin
 * @param yMillimetres upwards, in the file's own origin
 * @param rotationDegrees anticlockwise from where its body lies along x, 0 to below 360; 0 where it
 *     is not known
 * @param isTurnKnown whether the file has a rotation that could be read
 * @param side which side its body is on
 * @param valueText the value as the placement list has it; may be empty
 * @param packageText the package as the placement list has it; may be empty
 * @param descriptionText what else the placement list says that the part is; may be empty
 * @param place where the row stands
 */
public record Placement(
    Designator designator,
    double xMillimetres,
    double yMillimetres,
    double rotationDegrees,
    boolean isTurnKnown,
    Side side,
    String valueText,
    String packageText,
    String descriptionText,
    Place place) {

  /** The same, turned further anticlockwise; unturned where its rotation is not known. */
  public Placement turned(double degrees) {
    return new Placement(
        designator,
        xMillimetres,
        yMillimetres,
        isTurnKnown ? (rotationDegrees + degrees) % 360 : rotationDegrees,
        isTurnKnown,
        side,
        valueText,
        packageText,
        descriptionText,
        place);
  }
}
