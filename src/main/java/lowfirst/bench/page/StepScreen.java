package lowfirst.bench.page;

import java.util.List;
import java.util.Optional;

/**
 * One step, filling the screen.
 *
 * @param number the step's number
 * @param last the number of the last step
 * @param task what to do now: {@code Seat 6 × 4.7 kΩ resistor}
 * @param why the rule that put the step here
 * @param hand the part as it looks in the hand
 * @param board where it goes
 * @param advice what to mind, in reading order
 * @param meter what the meter should show; empty when nothing is measured
 * @param round the controls
 * @param batch how the batch stands
 * @param units how each unit stands
 * @param skyline every step as a bar as tall as its part, as SVG
 * @param spoken the step as one would say it
 * @param before the step before; empty at the first
 * @param after the step after; empty at the last
 * @param timeSpent how long was worked so far
 */
public record StepScreen(
    int number,
    int last,
    String task,
    String why,
    Hand hand,
    BoardPicture board,
    List<Advice> advice,
    Optional<Meter> meter,
    Round round,
    BatchLine batch,
    List<UnitChip> units,
    String skyline,
    String spoken,
    Optional<String> before,
    Optional<String> after,
    String timeSpent) {

  /** What must be in sight without scrolling: everything but how to do it. */
  public List<Advice> adviceBeforeMeter() {
    return advice.stream().filter(one -> !one.kind().equals("how")).toList();
  }

  /** How to do it. */
  public List<Advice> adviceAfterMeter() {
    return advice.stream().filter(one -> one.kind().equals("how")).toList();
  }

  /**
   * The part as it looks in the hand.
   *
   * @param svg a picture; empty when there is none
   * @param marking what is printed on it, in words; may be empty
   * @param perUnit for example {@code 3 on each of 2 boards}
   * @param bag where it lies and what should be left; may be empty
   */
  public record Hand(String svg, String marking, String perUnit, String bag) {}

  /**
   * Where it goes.
   *
   * @param whole the whole board; empty when nothing is known of it
   * @param near the surroundings of the places; empty when none is placed
   * @param order {@code swapped} to show the one that the screen's size doesn't suggest
   * @param side which side one sees
   * @param turnOver the address of the same step with the board turned over
   * @param zoom the address of the same step with the other of the two large
   * @param places the places in the order to fill
   */
  public record BoardPicture(
      String whole,
      String near,
      String order,
      String side,
      String turnOver,
      String zoom,
      List<PlaceChip> places) {}

  /**
   * A place to fill.
   *
   * @param order its number on the board map
   * @param designator what the board calls it
   * @param state how it stands on the units in view, in words
   * @param sign the same as a sign
   * @param address the page of this one place
   * @param due {@code due} when it is to be done in this round, else empty
   */
  public record PlaceChip(
      int order, String designator, String state, String sign, String address, String due) {}

  /**
   * Something to mind.
   *
   * @param kind {@code way} which way round, {@code how} how to do it, {@code look} a look-alike,
   *     {@code caution} a danger
   * @param sign a sign beside it
   * @param label the kind in a word
   * @param text what to mind
   */
  public record Advice(String kind, String sign, String label, String text) {}

  /**
   * What the meter should show.
   *
   * @param limits for example {@code 4.61 kΩ to 4.79 kΩ}
   * @param step the step's number, to ask about a reading
   * @param how how to measure
   */
  public record Meter(String limits, int step, String how) {}

  /**
   * The four controls and what they act on.
   *
   * @param action the id of what is about to be done, so that it counts once
   * @param spots what the controls act on, each as serial and designator
   * @param scope the same in words
   * @param controls seated, soldered, inspected
   * @param aside the fourth: set aside
   * @param reasons the usual reasons for setting aside
   * @param undo what an undo would take back; empty when nothing can be
   */
  public record Round(
      String action,
      List<String> spots,
      String scope,
      List<Control> controls,
      Control aside,
      List<Reason> reasons,
      Optional<Undo> undo) {}

  /**
   * A control that moves the state on.
   *
   * @param value the state
   * @param word the state in words
   * @param sign a sign beside it
   * @param key the key that does the same
   * @param rank {@code next} for the one to press now, {@code ahead} or {@code behind}
   */
  public record Control(String value, String word, String sign, String key, String rank) {}

  /**
   * A usual reason for setting aside.
   *
   * @param value as it is recorded
   * @param word as it stands on the button
   */
  public record Reason(String value, String word) {}

  /**
   * What can be taken back.
   *
   * @param action the id of the undo
   * @param events the events to take back
   * @param words what they did
   */
  public record Undo(String action, List<String> events, String words) {}

  /**
   * How the batch stands.
   *
   * @param words for example {@code Batch 2: 5 of 18 seated}
   * @param flip when to turn the boards over
   */
  public record BatchLine(String words, String flip) {}

  /**
   * How one unit stands.
   *
   * @param serial what is written on it
   * @param words how much of it is done
   * @param here how this step stands on it
   * @param address the same step for this unit alone, or for all again
   * @param only {@code true} when only this unit is in view
   */
  public record UnitChip(String serial, String words, String here, String address, String only) {}
}
