package lowfirst.sheet.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.IdentityHashMap;
import lowfirst.sheet.drawing.Drawing;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;

/** Drawings that stand in a document once and are shown many times (form XObjects). */
final class Stamps {
  /** Room around a drawing for the outer half of its strokes, points. */
  private static final float BLEED = 4;

  private final PDDocument document;
  private final PDResources resources;
  private final EmbeddedFont font;
  private final IdentityHashMap<Drawing, String> names = new IdentityHashMap<>();

  /**
   * Stamps of one document.
   *
   * @param resources of all its pages; the stamps are entered there
   */
  Stamps(PDDocument document, PDResources resources, EmbeddedFont font) {
    this.document = document;
    this.resources = resources;
    this.font = font;
  }

  /** The font of labels. */
  EmbeddedFont font() {
    return font;
  }

  /** What pages call a drawing; written at its first use. */
  String name(Drawing drawing) {
    String known = names.get(drawing);
    if (known != null) {
      return known;
    }
    String name = "S" + (names.size() + 1);
    names.put(drawing, name);
    double height = drawing.heightMillimetres() * Paper.POINTS;
    PageContent content = PageContent.ofStamp(height);
    DrawingPainter.paint(drawing, content, this, 0, 0, 1);
    COSStream stream = document.getDocument().createCOSStream();
    stream.setItem(COSName.TYPE, COSName.XOBJECT);
    stream.setItem(COSName.SUBTYPE, COSName.FORM);
    var box = new COSArray();
    box.add(new COSFloat(-BLEED));
    box.add(new COSFloat(-BLEED));
    box.add(new COSFloat((float) (drawing.widthMillimetres() * Paper.POINTS) + BLEED));
    box.add(new COSFloat((float) height + BLEED));
    stream.setItem(COSName.BBOX, box);
    stream.setItem(COSName.RESOURCES, resources.getCOSObject());
    try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.bytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    COSName forms = COSName.XOBJECT;
    var dictionary = resources.getCOSObject().getCOSDictionary(forms);
    if (dictionary == null) {
      dictionary = new org.apache.pdfbox.cos.COSDictionary();
      resources.getCOSObject().setItem(forms, dictionary);
    }
    dictionary.setItem(COSName.getPDFName(name), stream);
    return name;
  }
}
