package lowfirst.sheet.loads;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.channel.Remedy;
import lowfirst.channel.check.CheckKind;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;

/** What to change, so that a channel or a rail carries. */
final class ChangeTable {
  private ChangeTable() {}

  /** Every change; what is missing stands above, for all channels together. */
  static Optional<Block> of(List<Remedy> remedies) {
    List<Remedy> changes = MissingNumbers.without(remedies);
    return changes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                "What to change: any one line for each",
                List.of(Tables.words("for", 25), Tables.words("change", 75)),
                changes.stream()
                    .map(remedy -> Tables.row(target(remedy, changes), LoadsWords.words(remedy)))
                    .distinct()
                    .toList()));
  }

  /** The part; or the check alone, where the part fails others that this change doesn't mend. */
  private static String target(Remedy remedy, List<Remedy> all) {
    String part = LoadsWords.part(remedy.check());
    String words = LoadsWords.words(remedy);
    Set<CheckKind> failing =
        all.stream()
            .map(Remedy::check)
            .filter(check -> LoadsWords.part(check).equals(part))
            .collect(Collectors.toSet());
    long mended =
        all.stream()
            .filter(other -> failing.contains(other.check()))
            .filter(other -> LoadsWords.words(other).equals(words))
            .map(Remedy::check)
            .distinct()
            .count();
    return mended == failing.size() ? part : remedy.check().words();
  }
}
