package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.swap.subject.FittedPart;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Holds the rules against what a practitioner answers, case by case, with the reason. */
class PracticeTest {
  private static final Datasheets CATALOGUE = ShippedTables.catalogue();

  @ParameterizedTest(name = "{1} -> {4} ({5}): {6}, {8}")
  @CsvFileSource(
      resources = "practice.csv",
      useHeadersInDisplayName = false,
      numLinesToSkip = 1,
      maxCharsPerColumn = 400,
      nullValues = "none",
      emptyValue = "")
  void a_swap_is_judged_as_a_practitioner_would(
      PartKind kind,
      String asked,
      String packageName,
      String description,
      String candidate,
      String place,
      String answer,
      String rule,
      String why,
      String source) {
    SwapFinding finding =
        SwapFinding.ofParts(
            SwapPlaces.swap(
                part(kind, asked, text(packageName)),
                text(description),
                candidate,
                text(place),
                CATALOGUE));
    assertEquals(answer, finding.verdict().words(), () -> told(finding));
    if (!text(rule).isEmpty()) {
      boolean named =
          finding.reasons(finding.verdict()).stream()
              .anyMatch(reason -> reason.rule().toString().equals(rule));
      assertTrue(named, () -> told(finding));
    }
  }

  private static String text(String cell) {
    return cell == null ? "" : cell;
  }

  private static PartType part(PartKind kind, String text, String packageName) {
    var blank = PartType.named(kind, "", "", packageName);
    PartType type = FittedPart.of(text, blank, CATALOGUE);
    return packageName.isEmpty()
        ? type
        : new PartType(
            kind,
            type.text(),
            type.value(),
            type.tolerance(),
            type.ratedVoltage(),
            type.ratedPower(),
            type.typeNumber(),
            packageName);
  }

  private static String told(SwapFinding finding) {
    var text = new StringBuilder();
    finding
        .reasons()
        .forEach(
            reason ->
                text.append(reason.rule())
                    .append(": ")
                    .append(reason.verdict())
                    .append(", asked ")
                    .append(reason.answer().asked())
                    .append(", offered ")
                    .append(reason.answer().offered())
                    .append(' ')
                    .append(reason.answer().missing())
                    .append('\n'));
    return text.toString();
  }
}
