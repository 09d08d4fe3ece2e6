package lowfirst.sheet.progress;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape;

/** A QR code (ISO/IEC 18004) as a drawing: scan it at the bench to come to the step. */
final class StepCode {
  /** The quiet zone drawn, in modules; with the free space around a drawing it makes the four. */
  private static final int QUIET = 2;

  private StepCode() {}

  /** A square code with a side of {@code millimetres}, its quiet zone included. */
  static Drawing of(String text, double millimetres) {
    ByteMatrix modules = encoded(text);
    double module = millimetres / (modules.getWidth() + 2 * QUIET);
    List<Shape> shapes = new ArrayList<>();
    var ink = Shape.Paint.fill(Ink.BLACK);
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int start = x;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
          x++;
        }
        if (x > start) {
          shapes.add(
              new Shape.Box(
                  (start + QUIET) * module,
                  (y + QUIET) * module,
                  (x - start) * module,
                  module,
                  0,
                  ink));
        }
        x++;
      }
    }
    return new Drawing(millimetres, millimetres, shapes, "code to scan: " + text);
  }

  private static ByteMatrix encoded(String text) {
    try {
      return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a code: " + text.length(), e);
    }
  }
}
