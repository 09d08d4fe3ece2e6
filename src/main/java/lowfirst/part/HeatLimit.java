package lowfirst.part;

import java.util.List;
import java.util.Locale;
import lowfirst.quantity.Source;

/**
 * How much soldering heat a part bears. One number alone means nothing: it is a temperature, for a
 * time, at a distance from the body, and makers of one type number differ by 100 °C.
 *
 * @param celsius the temperature of bath or iron
 * @param seconds for how long, at most
 * @param distanceMillimetres how far from the body; 0 when the source doesn't say
 * @param note what narrows it; may be empty
 * @param source maker and document
 */
public record HeatLimit(
    double celsius, double seconds, double distanceMillimetres, String note, Source source) {

  private static final Source RECTIFIER =
      Source.datasheet("1N400x, Taiwan Semiconductor and generic sheets");
  private static final Source LED_HAND =
      Source.datasheet("Kingbright catalogue 2022-23 p. 74, 2014-15 p. 86");
  private static final Source LED_BATH = Source.datasheet("Gilway catalogue p. 169");
  private static final Source TRANSISTOR =
      new Source(Source.Origin.MEMORY, "common in transistor sheets, from memory");

  private static final List<HeatLimit> OF_RECTIFIERS =
      List.of(
          new HeatLimit(
              260, 10, 9.5, "other makers of the same type state 250 or 350 °C", RECTIFIER));

  private static final List<HeatLimit> OF_LEDS =
      List.of(
          new HeatLimit(
              300,
              3,
              0,
              "iron, tin-lead solder; 350 °C with lead-free; 280 °C for blue, green and white",
              LED_HAND),
          new HeatLimit(260, 3, 2, "5 s from 4 mm on", LED_BATH));

  private static final List<HeatLimit> OF_TRANSISTORS =
      List.of(new HeatLimit(260, 10, 1.6, "", TRANSISTOR));

  /** The published limits of this kind of part, the strictest first; none where none was read. */
  public static List<HeatLimit> of(PartType type) {
    String number = type.name();
    if (type.kind().isDiode() && number.toUpperCase(Locale.ROOT).startsWith("1N400")) {
      return OF_RECTIFIERS;
    }
    return switch (type.kind()) {
      case LED -> OF_LEDS;
      case TRANSISTOR, BIPOLAR_TRANSISTOR, JFET, MOSFET, THYRISTOR, REGULATOR -> OF_TRANSISTORS;
      default -> List.of();
    };
  }
}
