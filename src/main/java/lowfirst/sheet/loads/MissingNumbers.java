package lowfirst.sheet.loads;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.Remedy;
import lowfirst.channel.SumFinding;
import lowfirst.problem.Excerpt;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;

/** The numbers that findings lack: each once, with all that it would help to decide. */
final class MissingNumbers {
  /** So many channels and rails are named. */
  private static final int NAMED = 3;

  private final Map<String, Set<String>> checks = new LinkedHashMap<>();
  private final Map<String, Set<String>> places = new LinkedHashMap<>();

  private MissingNumbers() {}

  /** Nothing where no number is missing. */
  static Optional<Table> of(List<ChannelStudy> studies, List<? extends SumFinding> sums) {
    var missing = new MissingNumbers();
    studies.forEach(study -> missing.add(study.inputs().channel().name(), study.remedies()));
    sums.forEach(sum -> missing.add(LoadsWords.name(sum), sum.remedies()));
    return missing.checks.isEmpty() ? Optional.empty() : Optional.of(missing.table());
  }

  /** The remedies that change something, and don't ask for a number. */
  static List<Remedy> without(List<Remedy> remedies) {
    return remedies.stream().filter(remedy -> !isOne(remedy)).toList();
  }

  private static boolean isOne(Remedy remedy) {
    return remedy.action() == Remedy.Action.LOOK_UP;
  }

  private void add(String place, List<Remedy> remedies) {
    for (Remedy remedy : remedies) {
      if (isOne(remedy)) {
        String words = LoadsWords.words(remedy);
        checks.computeIfAbsent(words, none -> new LinkedHashSet<>()).add(remedy.check().words());
        places.computeIfAbsent(words, none -> new LinkedHashSet<>()).add(place);
      }
    }
  }

  private Table table() {
    return new Table(
        "What is missing: find this",
        List.of(Tables.words("find", 40), Tables.words("to decide", 38), Tables.words("of", 22)),
        checks.entrySet().stream()
            .map(
                entry ->
                    Tables.row(
                        entry.getKey(),
                        String.join(", ", entry.getValue()),
                        Excerpt.of(places.get(entry.getKey()), NAMED)))
            .toList());
  }
}
