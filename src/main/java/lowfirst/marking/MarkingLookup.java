package lowfirst.marking;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.marking.ColourCode.Body;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.marking.PrintedReading.Likelihood;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * Everything that is known about one marking: a row of bands, a print, or a value as people write
 * it.
 *
 * @param text the marking as given
 * @param resistor the bands read as a resistor's, if they are bands and may be on one
 * @param inductor the bands read as an inductor's, if they are bands and may be on one
 * @param prints what the text means as a print
 * @param written the text as people write values
 * @param codes how the value that was found is written on parts
 */
public record MarkingLookup(
    String text,
    Optional<BandDecoding> resistor,
    Optional<BandDecoding> inductor,
    List<PrintedReading> prints,
    Reading<WrittenValue> written,
    Optional<ValueCodes> codes) {

  /**
   * What is asked.
   *
   * @param on what carries the marking, where known
   * @param edition the table of colours
   * @param start whether the first band is known
   * @param tolerance a tolerance to write the value with
   * @param ppmPerKelvin a temperature coefficient to write the value with
   */
  public record Question(
      Optional<Carrier> on,
      Edition edition,
      Start start,
      Optional<Tolerance> tolerance,
      OptionalInt ppmPerKelvin) {

    /** A plain question about a marking. */
    public static Question plain() {
      return new Question(
          Optional.empty(),
          Edition.IEC_60062_2016,
          Start.UNKNOWN,
          Optional.empty(),
          OptionalInt.empty());
    }
  }

  /** Whether the person knows which band is the first. */
  public enum Start {
    UNKNOWN,
    KNOWN
  }

  public MarkingLookup {
    prints = List.copyOf(prints);
  }

  /** Looks a marking up; never throws on a person's text. */
  public static MarkingLookup of(String text, Question question) {
    Optional<BandSequence> bands = BandSequence.parse(text).value();
    if (bands.isPresent()) {
      return ofBands(text, bands.get(), question);
    }
    Optional<Carrier> on = question.on();
    List<PrintedReading> prints = PrintedCode.readings(text);
    if (on.isPresent()) {
      prints = prints.stream().filter(r -> r.on() == Carrier.ANY || r.on() == on.get()).toList();
    }
    Reading<WrittenValue> written =
        WrittenValue.parse(text, on.isPresent() ? dimension(on.get()) : Optional.empty());
    return new MarkingLookup(
        text.strip(),
        Optional.empty(),
        Optional.empty(),
        prints,
        written,
        codes(prints, written, question));
  }

  private static Optional<ValueCodes> codes(
      List<PrintedReading> prints, Reading<WrittenValue> written, Question question) {
    Optional<Quantity> value = value(prints, written);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Optional<Tolerance> tolerance =
        question.tolerance().isEmpty() && written.isRead()
            ? written.orThrow().tolerance()
            : question.tolerance();
    return Optional.of(ValueCodes.of(value.get(), tolerance, question.ppmPerKelvin()));
  }

  private static MarkingLookup ofBands(String text, BandSequence bands, Question question) {
    boolean maybeResistor = question.on().filter(on -> on != Carrier.RESISTOR).isEmpty();
    boolean maybeInductor = question.on().filter(on -> on != Carrier.INDUCTOR).isEmpty();
    return new MarkingLookup(
        text.strip(),
        maybeResistor ? Optional.of(decoded(bands, Body.RESISTOR, question)) : Optional.empty(),
        maybeInductor ? Optional.of(decoded(bands, Body.INDUCTOR, question)) : Optional.empty(),
        List.of(),
        Reading.fault("these are colours", "read them as bands"),
        Optional.empty());
  }

  private static BandDecoding decoded(BandSequence bands, Body body, Question question) {
    return question.start() == Start.KNOWN
        ? ColourCode.decodeFromStart(bands, body, question.edition())
        : ColourCode.decode(bands, body, question.edition());
  }

  private static Optional<Dimension> dimension(Carrier carrier) {
    return switch (carrier) {
      case RESISTOR, RESISTOR_NETWORK, TRIMMER, POTENTIOMETER -> Optional.of(Dimension.RESISTANCE);
      case CAPACITOR -> Optional.of(Dimension.CAPACITANCE);
      case INDUCTOR -> Optional.of(Dimension.INDUCTANCE);
      case ZENER_DIODE, REGULATOR, FUSE, CRYSTAL, VARISTOR, THERMISTOR, ANY -> Optional.empty();
    };
  }

  /** What people write wins over the print of the same text, where both say something. */
  private static Optional<Quantity> value(
      List<PrintedReading> prints, Reading<WrittenValue> written) {
    if (prints.isEmpty()) {
      return written.isRead() ? Optional.of(written.orThrow().value()) : Optional.empty();
    }
    for (PrintedReading print : prints) {
      if (print.isCoded()) {
        return print.value();
      }
    }
    return Optional.empty();
  }

  /** The bands' readings that the marking most likely means. */
  public Optional<BandDecoding> bands() {
    return resistor.isPresent() ? resistor : inductor;
  }

  /** Whether nothing at all was understood. */
  public boolean isUnknown() {
    return !isRead(resistor) && !isRead(inductor) && prints.isEmpty() && !written.isRead();
  }

  /** Whether it may be a type number rather than a value: no value is read, or only an odd one. */
  public boolean mayBeTypeNumber() {
    boolean valued = prints.isEmpty() && written.isRead();
    return bands().isEmpty()
        && !valued
        && text.chars().anyMatch(Character::isLetter)
        && prints.stream()
            .noneMatch(p -> p.likelihood() == Likelihood.USUAL && p.isEverydayValue());
  }

  private static boolean isRead(Optional<BandDecoding> bands) {
    return bands.isPresent() && !bands.get().readings().isEmpty();
  }
}
