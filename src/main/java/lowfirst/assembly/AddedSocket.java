package lowfirst.assembly;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import lowfirst.assembly.Seat.StatedBy;
import lowfirst.board.Designator;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/** A socket that has no seat of its own, on its circuit's spot. */
final class AddedSocket {
  /** A stamped or turned socket: 4.0 to 5.1 mm (Amphenol DILB8P-223TLF: 5.1 mm). */
  private static final double USUAL_HEIGHT_MILLIMETRES = 4.6;

  private static final Pattern PINS =
      Pattern.compile("(?i)(?:DI[PL][- ]?(\\d{1,2})\\b|(\\d{1,2})[- ]?(?:PINS?|WAY|DI[PL])\\b)");

  private AddedSocket() {}

  /** Its seat; a height is taken from the BOM, else from an outline, else assumed. */
  static Seat of(
      Designator name,
      Seat circuit,
      PartType type,
      OptionalDouble stated,
      Optional<BodyOutline> outline) {
    OptionalDouble drawn = outline.map(BodyOutline::height).orElse(OptionalDouble.empty());
    StatedBy by =
        stated.isPresent()
            ? StatedBy.BOM
            : drawn.isPresent() ? StatedBy.OUTLINE : StatedBy.ASSUMPTION;
    OptionalDouble height =
        switch (by) {
          case BOM -> stated;
          case OUTLINE -> drawn;
          default -> OptionalDouble.of(USUAL_HEIGHT_MILLIMETRES);
        };
    return new Seat(
        name,
        type,
        circuit.placement(),
        circuit.side(),
        outline.isPresent() ? outline : circuit.outline(),
        height,
        by,
        Step.Stage.SOLDER,
        "the socket of " + circuit.designator());
  }

  /** The kind of socket that a circuit needs. */
  static PartType typeFor(Seat circuit) {
    int pins = pinsOf(circuit);
    return PartType.named(
        PartKind.SOCKET,
        pins > 0 ? pins + "-pin" : "for " + circuit.type().text(),
        "",
        circuit.type().packageName());
  }

  /** How many pins some words say; 0 where they say none. */
  static int pins(String words) {
    var matcher = PINS.matcher(words);
    return matcher.find()
        ? Integer.parseInt(matcher.group(1) != null ? matcher.group(1) : matcher.group(2))
        : 0;
  }

  /** How many pins a circuit has; 0 where nothing tells. */
  static int pinsOf(Seat seat) {
    int known = seat.outline().map(BodyOutline::pins).orElse(0);
    return known > 0 ? known : pins(seat.type().packageName());
  }
}
