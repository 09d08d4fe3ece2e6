package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.part.OutlineName.Posture;
import lowfirst.part.OutlineRules.Asked;
import lowfirst.problem.Reading;

/** What a name tells outright: a height, an outline of the table, or just a body. */
final class NamedOutlines {
  private final Asked asked;
  private final OutlineName name;
  private final PartKind kind;
  private final BodyOutlines table;

  NamedOutlines(Asked asked) {
    this.asked = asked;
    this.name = asked.name();
    this.kind = asked.kind();
    this.table = asked.table();
  }

  Optional<Reading<BodyOutline>> statedHeight() {
    OptionalDouble height = name.measure("H");
    if (height.isEmpty() || height.getAsDouble() == 0) {
      return Optional.empty();
    }
    double across = name.diameter().orElse(0);
    return Optional.of(
        Reading.of(
            asked.made(
                height.getAsDouble(),
                name.measure("L").orElse(across),
                name.measure("W").orElse(across),
                name.measure("P").orElse(0),
                0,
                "height stated in the name"),
            "height from the name"));
  }

  /** The longest run of words that the table names, in the posture that the name states. */
  Optional<Reading<BodyOutline>> tableName() {
    List<String> words = name.words();
    for (int length = Math.min(4, words.size()); length > 0; length--) {
      for (int from = 0; from + length <= words.size(); from++) {
        Optional<BodyOutline> row = row(String.join(" ", words.subList(from, from + length)));
        if (row.isPresent()) {
          BodyOutline found = row.get();
          List<Integer> rows = name.rows();
          int pins = rows.isEmpty() ? found.pins() : rows.get(0) * rows.get(1);
          double pitch = name.measure("P").orElse(found.pitchMillimetres());
          double row_ = rows.isEmpty() || pitch == 0 ? 0 : rows.get(1) * pitch;
          return Optional.of(
              Reading.of(
                  Asked.sized(
                      found,
                      found.lengthMillimetres() > 0 ? found.lengthMillimetres() : row_,
                      found.widthMillimetres(),
                      pitch,
                      pins),
                  "the outline " + found.name()));
        }
      }
    }
    return Optional.empty();
  }

  /** A table row by one name, also without what follows its last hyphen or a bent-lead mark. */
  private Optional<BodyOutline> row(String words) {
    String plain = words.replaceFirst("(?<=\\d)Z\\d+$", "").replaceFirst("(?<=^0\\d{3})V$", "");
    String shorter = plain.replaceFirst("-[A-Z0-9.]*$", "");
    String shortest = shorter.replaceFirst("-[A-Z0-9.]*$", "");
    return Stream.of(plain, shorter, shortest)
        .filter(text -> text.length() >= 2 && !text.matches("\\d{1,2}"))
        .flatMap(text -> inPosture(text).stream())
        .findFirst();
  }

  private Optional<BodyOutline> inPosture(String text) {
    Optional<BodyOutline> plain = table.named(text);
    if (plain.isEmpty() || name.posture() == Posture.NOT_STATED) {
      return plain;
    }
    String wanted = name.posture() == Posture.LYING ? " lying" : " standing";
    String base = plain.get().name().replaceFirst(" (lying|standing)$", "");
    return table.named(base + wanted).or(() -> table.named(text + wanted)).or(() -> known(plain));
  }

  /** A row that knows only the other posture does not tell this one's height. */
  private Optional<BodyOutline> known(Optional<BodyOutline> plain) {
    return plain.map(
        row ->
            row.name().endsWith(name.posture() == Posture.LYING ? " standing" : " lying")
                ? OutlineRules.with(row, 0, row.source())
                : row);
  }

  /** The name tells a body from above, and not how tall it is. */
  Optional<Reading<BodyOutline>> bodyOnly() {
    double across = name.diameter().orElse(0);
    double length = name.measure("L").orElse(across);
    double width = name.measure("W").orElse(across);
    if (kind == PartKind.WIRE_LINK || length == 0 || width == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Reading.of(
            asked.made(0, length, width, name.measure("P").orElse(0), 0, "body stated in the name"),
            "body from the name; its height is not in it"));
  }
}
