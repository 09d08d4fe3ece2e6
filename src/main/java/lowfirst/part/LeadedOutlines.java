package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.part.OutlineName.Posture;
import lowfirst.part.OutlineRules.Asked;
import lowfirst.problem.Reading;

/** Cylinders between two leads, lenses and chokes. */
final class LeadedOutlines {
  /** Bent lead above the body of a standing axial part; rows 0204 to 0617 give 2.5 to 3.6 mm. */
  private static final double STANDING_BEND_MILLIMETRES = 3.0;

  /** A number of millimetres that no letter, hyphen or cross before it gives another meaning. */
  private static final Pattern MILLIMETRES =
      Pattern.compile("(?<![\\w.+-])(\\d{1,2}(?:\\.\\d)?) ?MM(?![\\w.])");

  private final Asked asked;
  private final OutlineName name;
  private final PartKind kind;
  private final BodyOutlines table;

  LeadedOutlines(Asked asked) {
    this.asked = asked;
    this.name = asked.name();
    this.kind = asked.kind();
    this.table = asked.table();
  }

  /** A cylinder between two leads: lying it is as tall as thick, standing as tall as long. */
  Optional<Reading<BodyOutline>> axial() {
    OptionalDouble length = name.measure("L");
    OptionalDouble diameter = name.diameter();
    boolean twoLeads =
        name.has("AXIAL", "RES-TH")
            || kind == PartKind.RESISTOR
            || kind.isDiode()
            || kind == PartKind.INDUCTOR;
    if (!twoLeads || name.has("RADIAL") || diameter.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    double l = length.getAsDouble();
    double pitch = name.measure("P").orElse(0);
    if (name.posture() == Posture.STANDING) {
      BodyOutline standing =
          table
              .named(bodySize() + " standing")
              .map(row -> Asked.sized(row, d, d, pitch, 2))
              .orElseGet(
                  () ->
                      asked.made(
                          l + STANDING_BEND_MILLIMETRES,
                          d,
                          d,
                          pitch,
                          2,
                          "body length from the name and 3 mm of bent lead"));
      return Optional.of(Reading.of(standing, "standing, body length from the name"));
    }
    return Optional.of(
        Reading.of(
            asked.made(d, l, d, pitch, 2, "body diameter stated in the name"),
            "lying, body diameter from the name"));
  }

  /** A body size such as 0207 among the words, or nothing that the table knows. */
  private String bodySize() {
    return name.words().stream()
        .map(word -> word.replace("DIN", ""))
        .filter(word -> word.matches("0\\d{3}"))
        .findFirst()
        .orElse("?");
  }

  Optional<Reading<BodyOutline>> led() {
    if (kind != PartKind.LED && !name.text().startsWith("LED")) {
      return Optional.empty();
    }
    double d = name.diameter().orElseGet(this::lens);
    String row = Math.abs(d - 3) < 0.3 ? "LED 3 mm" : Math.abs(d - 5) < 0.3 ? "LED 5 mm" : "";
    return table.named(row).map(found -> Reading.of(found, "lens diameter from the name"));
  }

  /** Millimetres said of an LED by themselves are its lens: red 5mm; 0 without any, or of two. */
  private double lens() {
    List<String> lengths = MILLIMETRES.matcher(name.text()).results().map(r -> r.group(1)).toList();
    return lengths.size() == 1 ? Double.parseDouble(lengths.get(0)) : 0;
  }

  Optional<Reading<BodyOutline>> choke() {
    if (kind != PartKind.INDUCTOR || !name.has("RADIAL")) {
      return Optional.empty();
    }
    return name.diameter().stream()
        .boxed()
        .flatMap(
            d ->
                Stream.of(7, 10, 12)
                    .filter(known -> Math.abs(known - d) <= 0.5)
                    .flatMap(known -> table.named("radial choke D" + known).stream()))
        .findFirst()
        .map(found -> Reading.of(found, "choke diameter from the name"));
  }
}
