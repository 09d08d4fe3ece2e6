package lowfirst.sheet.pdf;

import java.nio.charset.StandardCharsets;

/** What a box to tick looks like: an outline, and a check mark when ticked. */
final class BoxLook {
  private BoxLook() {}

  /** The content of a square box with sides of {@code side} points. */
  static String of(double side, boolean ticked) {
    var content = new PageContent(side);
    content.stroke(0, 0.8);
    content.fill(0xFFFFFF);
    content.roundBox(0.6, 0.6, side - 1.2, side - 1.2, 1);
    content.paint('B');
    if (ticked) {
      content.stroke(0, 1.6);
      content.moveTo(side * 0.22, side * 0.52);
      content.lineTo(side * 0.43, side * 0.74);
      content.lineTo(side * 0.80, side * 0.26);
      content.paint('S');
    }
    return new String(content.bytes(), StandardCharsets.ISO_8859_1);
  }
}
