package lowfirst.sheet.progress;

import java.util.List;

/**
 * What to look for when a soldered board is inspected, in our own words, by the classes of
 * IPC-A-610: 1 general use, 2 long and uninterrupted use, 3 failure not allowed.
 *
 * <p>Figures: vertical fill and wetting, IPC-A-610F table 7-4; lead ends, table 7-6 of the same and
 * an earlier edition's table 5-2, all as cited in secondary publications, not read in the standard
 * itself.
 */
final class Workmanship {
  private Workmanship() {}

  /**
   * One criterion.
   *
   * @param heading what it is about
   * @param firstClass what class 1 asks
   * @param secondClass what class 2 asks
   * @param thirdClass what class 3 asks
   */
  record Criterion(String heading, String firstClass, String secondClass, String thirdClass) {}

  static final List<Criterion> CRITERIA =
      List.of(
          new Criterion(
              "Right part, right place",
              "Value, type and place agree with the list; the right way round where it matters.",
              "As class 1; markings can be read.",
              "As class 2; markings all read the same way."),
          new Criterion(
              "Seating",
              "Body sits so that it can't touch its neighbours.",
              "As class 1; flat parts lie on the board, hot ones stand off by 1.5 mm or more.",
              "As class 2; nothing is tilted."),
          new Criterion(
              "Lead end",
              "The end can be seen in the solder.",
              "The end can be seen; it sticks out no more than 2.5 mm.",
              "The end can be seen; it sticks out no more than 1.5 mm."),
          new Criterion(
              "Hole filled",
              "Solder has flowed into the hole.",
              "At least three quarters full.",
              "At least three quarters full."),
          new Criterion(
              "Wetting at the part's side",
              "Solder has wetted lead and pad.",
              "Half way round the lead, or more.",
              "Three quarters round the lead, or more."),
          new Criterion(
              "Joint surface",
              "Smooth, hollow flank; no crack; not a ball on the lead.",
              "As class 1.",
              "As class 1; not disturbed while it set."),
          new Criterion(
              "Nothing that joins what must stay apart",
              "No bridge, no splash, no loose ball, no clipped end.",
              "As class 1.",
              "As class 1."),
          new Criterion(
              "Nothing burnt or broken",
              "Body, pad and track are whole; no lifted pad.",
              "As class 1; no scorched body or insulation.",
              "As class 2."),
          new Criterion(
              "Clean and fast",
              "No flux that the maker says to wash off; screws tight, heatsinks seated.",
              "As class 1.",
              "As class 1; no flux to be seen."));
}
