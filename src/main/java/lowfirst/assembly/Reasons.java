package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lowfirst.board.Designator;

/** Which rule put each group where it is, and the same in words of its own. */
final class Reasons {
  private static final int MOST_REMARKS = 6;

  private final Map<Designator, Set<Designator>> over = new HashMap<>();
  private final Map<Designator, Set<Designator>> under = new HashMap<>();
  private final Set<Integer> ranksWithSturdy = new HashSet<>();

  private Reasons(List<Covers.Pair> covers, List<Ranked> ordered) {
    for (Covers.Pair pair : covers) {
      Designator low = pair.one().designator();
      Designator high = pair.other().designator();
      over.computeIfAbsent(low, none -> new TreeSet<>()).add(high);
      under.computeIfAbsent(high, none -> new TreeSet<>()).add(low);
    }
    ordered.stream()
        .filter(ranked -> !ranked.group().isDelicate())
        .forEach(ranked -> ranksWithSturdy.add(ranked.rank()));
  }

  /** The same groups, each with its rule and reason. */
  static List<Ranked> given(List<Ranked> ordered, List<Covers.Pair> covers) {
    var reasons = new Reasons(covers, ordered);
    return ordered.stream().map(reasons::given).toList();
  }

  private Ranked given(Ranked ranked) {
    Group group = ranked.group();
    Rule rule = rule(ranked);
    var words = new ArrayList<String>();
    words.add(height(group));
    switch (rule) {
      case UNDER_ANOTHER -> words.add("under " + Words.list(neighbours(group, over)));
      case COVERS_ANOTHER ->
          words.add("after what it covers: " + Words.list(neighbours(group, under)));
      case STURDY_BEFORE_DELICATE -> words.add("after the sturdier parts of this height");
      case WIRE_LINKS_FIRST -> words.add("wire links go first");
      case LOWEST_FIRST -> words.add("lowest first");
      case HEIGHT_NOT_KNOWN -> words.add("late, so that it can't prop the board up");
      case FASTENED_FIRST ->
          words.add("bolted before soldering, so that no strain stays in the leads");
      case SAVES_A_FLIP, AFTER_RAIL_CHECK -> {
        // Said by Batches and by the remark.
      }
    }
    remarks(group).forEach(words::add);
    return ranked.saysInstead(rule, String.join("; ", words));
  }

  private Rule rule(Ranked ranked) {
    Group group = ranked.group();
    if (ranked.rule() == Rule.COVERS_ANOTHER) {
      return Rule.COVERS_ANOTHER;
    }
    if (group.isWireLink()) {
      return Rule.WIRE_LINKS_FIRST;
    }
    if (group.first().stage() == Step.Stage.FASTEN_AND_SOLDER) {
      return Rule.FASTENED_FIRST;
    }
    if (!neighbours(group, over).isEmpty()) {
      return Rule.UNDER_ANOTHER;
    }
    if (group.height().isEmpty()) {
      return Rule.HEIGHT_NOT_KNOWN;
    }
    boolean later = group.isDelicate() && ranksWithSturdy.contains(ranked.rank());
    return later ? Rule.STURDY_BEFORE_DELICATE : Rule.LOWEST_FIRST;
  }

  private static Set<Designator> neighbours(Group group, Map<Designator, Set<Designator>> of) {
    var found = new TreeSet<Designator>();
    // Most boards have nothing that lies over another.
    for (Seat seat : of.isEmpty() ? List.<Seat>of() : group.seats()) {
      found.addAll(of.getOrDefault(seat.designator(), Set.of()));
    }
    return found;
  }

  /** How tall, and how sure that is. */
  private static String height(Group group) {
    Seat seat = group.first();
    if (seat.height().isEmpty()) {
      return "height not known";
    }
    String height = Words.millimetres(seat.height().getAsDouble());
    return switch (seat.statedHeight()) {
      case BOM -> height + " by the BOM";
      case OUTLINE, NOBODY -> height;
      case ASSUMPTION -> "about " + height + ", assumed";
    };
  }

  /** What is said of single parts of a group, shortened where there is much. */
  private static List<String> remarks(Group group) {
    List<String> remarks =
        group.seats().stream()
            .map(Seat::remark)
            .filter(text -> !text.isEmpty())
            .distinct()
            .toList();
    if (remarks.size() <= MOST_REMARKS) {
      return remarks;
    }
    var first = new ArrayList<>(remarks.subList(0, MOST_REMARKS));
    first.add((remarks.size() - MOST_REMARKS) + " more alike");
    return first;
  }
}
