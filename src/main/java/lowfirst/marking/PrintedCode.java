package lowfirst.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.quantity.Quantity;

/**
 * Reads what is printed on parts: letter and digit codes of IEC 60062 and makers' customs. The same
 * print means different things on different parts, so every reading says on what.
 */
public final class PrintedCode {
  private static final int LONGEST = 40;

  private PrintedCode() {}

  /** Everything that a print can mean, the usual before the rare; empty when nothing. */
  public static List<PrintedReading> readings(String text) {
    String print = normalised(text);
    if (print.isEmpty() || print.length() > LONGEST) {
      return List.of();
    }
    var readings = new ArrayList<PrintedReading>();
    // before fixed resistors: 10KB is far more often one that turns than one of ±0.1 %
    readings.addAll(AdjustablePrint.readings(print));
    readings.addAll(ResistorPrint.readings(print));
    readings.addAll(NetworkPrint.readings(print));
    readings.addAll(CapacitorPrint.readings(print));
    readings.addAll(MilliPrint.readings(print));
    readings.addAll(InductorPrint.readings(print));
    readings.addAll(VoltagePrint.readings(print));
    readings.addAll(DiscPrint.readings(print));
    if (print.indexOf('A') > 0) {
      FusePrint.of(print).ifPresent(readings::add);
    }
    FrequencyPrint.of(print).ifPresent(readings::add);
    readings.addAll(others(print));
    if (readings.size() > 1) {
      readings.sort(
          Comparator.comparing(PrintedReading::likelihood)
              .thenComparing(reading -> !reading.isEverydayValue()));
    }
    return List.copyOf(readings);
  }

  private static String normalised(String text) {
    return text.strip()
        .replace('\u03bc', 'µ')
        .replace('\u2126', 'Ω')
        .replaceAll("[\\p{Zs}\\p{Cntrl}]+", " ");
  }

  private static List<PrintedReading> others(String print) {
    return switch (print.length()) {
      case 1 -> ToleranceLetter.of(print.charAt(0)).map(PrintedCode::tolerance).stream().toList();
      case 2 ->
          PrintedReading.found(
              VoltageCode.of(print).map(PrintedCode::ratedVoltage),
              DateCode.of(print).map(PrintedCode::date));
      default -> Dielectric.of(print).map(PrintedCode::dielectric).stream().toList();
    };
  }

  private static PrintedReading dielectric(Dielectric found) {
    return new PrintedReading(
        Carrier.CAPACITOR,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "dielectric " + found.code() + ": " + found.words(),
        "dielectric code of EIA RS-198",
        Likelihood.USUAL);
  }

  private static PrintedReading ratedVoltage(Quantity volts) {
    return new PrintedReading(
        Carrier.CAPACITOR,
        Optional.empty(),
        Optional.empty(),
        Optional.of(volts),
        "",
        "voltage code (EIA/JIS)",
        Likelihood.USUAL);
  }

  private static PrintedReading date(DateCode date) {
    List<Integer> years = date.years();
    String words = "made in month " + date.month() + " of " + years.get(0) + " or " + years.get(1);
    return PrintedReading.words(words, "date code (IEC 60062, from memory)", Likelihood.RARE);
  }

  private static PrintedReading tolerance(ToleranceLetter letter) {
    return new PrintedReading(
        Carrier.ANY,
        Optional.empty(),
        Optional.of(letter.percent()),
        Optional.empty(),
        letter.otherUse(),
        "tolerance letter (IEC 60062)",
        Likelihood.USUAL);
  }
}
