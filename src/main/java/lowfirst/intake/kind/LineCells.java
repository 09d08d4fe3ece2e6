package lowfirst.intake.kind;

import java.util.List;

/**
 * The cells of one BOM line that tell what its part is; empty where there is none.
 *
 * @param number a type number, or what stands in its column
 * @param kind what a column says that only tells kinds
 * @param letters those of the first designator
 * @param otherText words among the designators
 * @param isNumberGuessed whether the number's column may hold symbols or dealers' numbers
 */
public record LineCells(
    String value,
    String description,
    String number,
    String packageName,
    String tolerance,
    String voltage,
    String power,
    String kind,
    String letters,
    String otherText,
    boolean isNumberGuessed) {

  /** What a placement list tells of a part that no BOM names. */
  public static LineCells placed(
      String value, String packageName, String description, String letters) {
    return new LineCells(value, description, "", packageName, "", "", "", "", letters, "", false);
  }

  /** The same with another value and package. */
  public LineCells with(String otherValue, String otherPackage) {
    return new LineCells(
        otherValue,
        description,
        number,
        otherPackage,
        tolerance,
        voltage,
        power,
        kind,
        letters,
        otherText,
        isNumberGuessed);
  }

  /** All of them. */
  List<String> texts() {
    return List.of(
        value,
        description,
        number,
        packageName,
        tolerance,
        voltage,
        power,
        kind,
        letters,
        otherText);
  }

  /** As {@link lowfirst.part.PartType} does it, and for the same reason. */
  @Override
  public boolean equals(Object other) {
    return other instanceof LineCells that
        && isNumberGuessed == that.isNumberGuessed
        && texts().equals(that.texts());
  }

  @Override
  public int hashCode() {
    return texts().hashCode();
  }
}
