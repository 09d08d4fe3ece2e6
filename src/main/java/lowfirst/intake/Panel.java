package lowfirst.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.intake.column.Numbers;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * A placement list that holds one board several times over, as on a panel of boards made in one
 * piece: its designators stand there so often, and always the same ways apart.
 *
 * @param one the placements of one of them, and what stands on the panel but once
 */
record Panel(List<Placement> one, Problem said) {

  /** What rounding may move a copy by. */
  private static final double NEAR_MILLIMETRES = 0.05;

  /** More than this in one piece is no panel of boards to be built by hand. */
  private static final int MOST = 64;

  /** Nor is so long a list, and looking for copies in it takes time. */
  private static final int MOST_PLACED = 10_000;

  /** Share of the designators that recur which must do so alike; at least half of all do. */
  private static final double MOSTLY = 0.8;

  /** How many designators that recur are taken for a pattern of it, one after the other. */
  private static final int MOST_TRIED = 50;

  /** The panel that a list describes; empty when it describes one board. */
  static Optional<Panel> of(List<Placement> all) {
    Map<Designator, List<Placement>> places = new LinkedHashMap<>();
    if (all.size() <= MOST_PLACED) {
      all.forEach(one -> places.computeIfAbsent(one.designator(), n -> new ArrayList<>()).add(one));
    }
    List<List<Placement>> recurring =
        places.values().stream().filter(same -> same.size() > 1).toList();
    double needed = Math.max(2, Math.max(MOSTLY * recurring.size(), places.size() / 2.0));
    // Where so many recur alike, the others are too few to be all of the first ones.
    long others = Math.max(-1, recurring.size() - (long) Math.ceil(needed));
    return recurring.stream()
        .limit(Math.min(others + 1, MOST_TRIED))
        .filter(same -> same.size() <= MOST)
        .map(Panel::lowestFirst)
        .filter(Panel::areApart)
        .flatMap(copies -> by(copies, all, places, needed).stream())
        .findFirst();
  }

  /** The panel whose boards stand as these copies do, if enough designators recur alike. */
  private static Optional<Panel> by(
      List<Placement> copies,
      List<Placement> all,
      Map<Designator, List<Placement>> places,
      double needed) {
    Map<Designator, Placement> chosen = new HashMap<>();
    places.forEach(
        (name, same) -> alike(copies, same).ifPresent(placement -> chosen.put(name, placement)));
    return chosen.size() < needed
        ? Optional.empty()
        : Optional.of(
            new Panel(
                all.stream()
                    .filter(one -> chosen.getOrDefault(one.designator(), one).equals(one))
                    .toList(),
                said(copies)));
  }

  /** A list that somebody put together twice is no panel. */
  private static boolean areApart(List<Placement> copies) {
    Placement read = copies.get(0);
    return copies.stream()
        .skip(1)
        .noneMatch(other -> isNear(other, read.xMillimetres(), read.yMillimetres()));
  }

  /** The one of these places that stands to the others as the first of {@code first} does. */
  private static Optional<Placement> alike(List<Placement> first, List<Placement> same) {
    Placement any = same.get(0);
    boolean turned =
        same.stream()
            .anyMatch(
                one -> one.side() != any.side() || one.rotationDegrees() != any.rotationDegrees());
    return turned || same.size() != first.size()
        ? Optional.empty()
        : same.stream().filter(one -> areAsFarApart(first, same, one)).findFirst();
  }

  private static boolean areAsFarApart(
      List<Placement> first, List<Placement> same, Placement chosen) {
    return first.stream()
        .allMatch(
            copy -> {
              double x = chosen.xMillimetres() + copy.xMillimetres() - first.get(0).xMillimetres();
              double y = chosen.yMillimetres() + copy.yMillimetres() - first.get(0).yMillimetres();
              return same.stream().anyMatch(one -> isNear(one, x, y));
            });
  }

  /** Whatever the order of the rows: the copy that stands leftmost, of several the lowest. */
  private static List<Placement> lowestFirst(List<Placement> copies) {
    double left = copies.stream().mapToDouble(Placement::xMillimetres).min().orElse(0);
    Placement lowest =
        copies.stream()
            .filter(copy -> copy.xMillimetres() - left < NEAR_MILLIMETRES)
            .min(Comparator.comparingDouble(Placement::yMillimetres))
            .orElse(copies.get(0));
    var ordered = new ArrayList<>(List.of(lowest));
    copies.stream().filter(copy -> !copy.equals(lowest)).forEach(ordered::add);
    return ordered;
  }

  private static boolean isNear(Placement one, double x, double y) {
    return Math.abs(one.xMillimetres() - x) < NEAR_MILLIMETRES
        && Math.abs(one.yMillimetres() - y) < NEAR_MILLIMETRES;
  }

  private static Problem said(List<Placement> copies) {
    Placement read = copies.get(0);
    Placement next = copies.get(1);
    return new Problem(
        Kind.ROW_IGNORED,
        next.place(),
        "the list holds the board "
            + copies.size()
            + " times, as a panel has it: "
            + read.designator()
            + " and the others stand again "
            + Numbers.plain(next.xMillimetres() - read.xMillimetres())
            + ", "
            + Numbers.plain(next.yMillimetres() - read.yMillimetres())
            + " mm away, and so on; one of them was read",
        "nothing, or how many you build as count in boards.csv");
  }
}
