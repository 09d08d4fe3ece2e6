package lowfirst.sheet.body;

import java.util.Optional;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sorting.PartMarking;

/**
 * A part as it looks in the hand, life size, with its marking: colour bands each with its IEC 60757
 * code, or the print, and what tells which way round it goes.
 */
public final class PartPicture {
  private PartPicture() {}

  /** A part of this type in a known body. */
  public static Drawing of(PartType type, Optional<BodyOutline> outline) {
    return of(type, outline, PartMarking.of(type));
  }

  /** A part of this type with one of the markings that it may carry. */
  public static Drawing of(PartType type, Optional<BodyOutline> outline, PartMarking marking) {
    if (type.kind() == PartKind.WIRE_LINK) {
      return PlainBodies.link();
    }
    if (marking.isBanded()) {
      return BandedBody.of(type, outline, marking.bands().get(0));
    }
    String text = marking.texts().isEmpty() ? "" : marking.texts().get(0);
    return bodyWith(type, outline, text);
  }

  private static Drawing bodyWith(PartType type, Optional<BodyOutline> outline, String text) {
    PartKind kind = type.kind();
    if (Stance.of(type).isTransistorLike()) {
      return LeadedBodies.onLeads(kind, type.packageName(), outline, text);
    }
    return switch (kind) {
      case CERAMIC_CAPACITOR, CAPACITOR, VARISTOR, THERMISTOR, PHOTORESISTOR ->
          PlainBodies.disc(kind, outline, text);
      case ELECTROLYTIC_CAPACITOR -> PlainBodies.can(outline, text);
      case TANTALUM_CAPACITOR -> PlainBodies.drop(outline, text);
      case DIODE, SCHOTTKY_DIODE, ZENER_DIODE -> LeadedBodies.diode(kind, outline, text);
      case LED -> LeadedBodies.led(type, outline);
      case TRANSISTOR, BIPOLAR_TRANSISTOR, JFET, MOSFET, THYRISTOR, REGULATOR ->
          LeadedBodies.onLeads(kind, type.packageName(), outline, text);
      case INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY, SOCKET, MODULE ->
          PinnedBodies.dual(kind, type.packageName(), outline, text);
      case RESISTOR_NETWORK -> PinnedBodies.single(outline, text);
      case PIN_HEADER, CONNECTOR -> PinnedBodies.header(type, outline);
      case SCREW_TERMINAL -> PinnedBodies.terminal(type, outline);
      case TRIMMER, POTENTIOMETER -> PlainBodies.trimmer(kind, outline, text);
      default -> PlainBodies.box(kind, outline, text.isEmpty() ? fallback(type) : text);
    };
  }

  private static String fallback(PartType type) {
    return type.text().length() <= 14 ? type.text() : "";
  }
}
