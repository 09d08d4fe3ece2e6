package lowfirst.sheet.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.font.encoding.WinAnsiEncoding;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;

/**
 * Boxes to tick and lines to write on (ISO 32000-1:2008, 12.7), each with its appearance, so that
 * they print everywhere and the archive profile holds.
 */
final class FormFields {
  private static final int PRINTED = 4;
  private static final int SEVERAL_LINES = 1 << 12;
  private static final COSName ON = COSName.getPDFName("Ticked");
  private static final COSName OFF = COSName.getPDFName("Off");
  private static final COSName TYPING = COSName.getPDFName("Typing");

  private final PDDocument document;
  private final double paperHeight;
  private final Tags tags;
  private final EmbeddedFont font;
  private final COSArray fields = new COSArray();
  private final Map<String, COSStream> looks = new HashMap<>();

  FormFields(PDDocument document, Paper paper, Tags tags, EmbeddedFont font) {
    this.document = document;
    this.paperHeight = paper.heightPoints();
    this.tags = tags;
    this.font = font;
  }

  /** Where a field stands on a page: points, y downwards from the top. */
  record Spot(Page page, double x, double y, double width, double height) {}

  /** Lines of text with the type size and leading, points. */
  record Filling(List<String> lines, double size, double leading) {}

  /** A box to tick. */
  void box(Spot spot, boolean ticked, String words, Tags.Element parent) {
    var looksOfBox = new COSDictionary();
    looksOfBox.setDirect(true); // some viewers take an indirect one for a single appearance
    looksOfBox.setItem(ON, look(spot, "box with tick", BoxLook.of(spot.width(), true)));
    looksOfBox.setItem(OFF, look(spot, "box", BoxLook.of(spot.width(), false)));
    COSDictionary widget = widget(spot, words, parent, looksOfBox);
    widget.setItem(COSName.FT, COSName.BTN);
    COSName state = ticked ? ON : OFF;
    widget.setItem(COSName.V, state);
    widget.setItem(COSName.AS, state);
  }

  /** A line to write on; {@code filling} is what stands there already. */
  void line(Spot spot, Filling filling, String words, Tags.Element parent) {
    String text = String.join("\n", filling.lines());
    COSDictionary widget = widget(spot, words, parent, look(spot, text, shown(spot, filling)));
    widget.setItem(COSName.FT, COSName.TX);
    widget.setItem(COSName.V, new COSString(text));
    widget.setString(COSName.DA, "/" + TYPING.getName() + " " + filling.size() + " Tf 0 g");
    if (filling.lines().size() > 1) {
      widget.setInt(COSName.FF, SEVERAL_LINES);
    }
  }

  private String shown(Spot spot, Filling filling) {
    var content = new PageContent(spot.height());
    double baseline = 2 + filling.size() * 0.75;
    for (String line : filling.lines()) {
      content.text(font, filling.size(), 2, baseline, 0, line);
      baseline += filling.leading();
    }
    return "/Tx BMC q "
        + new String(content.bytes(), java.nio.charset.StandardCharsets.ISO_8859_1)
        + "Q EMC";
  }

  private COSDictionary widget(Spot spot, String words, Tags.Element parent, COSDictionary look) {
    var widget = new COSDictionary();
    widget.setItem(COSName.TYPE, COSName.ANNOT);
    widget.setItem(COSName.SUBTYPE, COSName.WIDGET);
    widget.setItem(COSName.RECT, rectangle(spot));
    widget.setInt(COSName.F, PRINTED);
    widget.setItem(COSName.P, spot.page().dictionary());
    widget.setString(COSName.T, "field-" + (fields.size() + 1));
    widget.setString(COSName.TU, words);
    var appearance = new COSDictionary();
    appearance.setDirect(true);
    appearance.setItem(COSName.N, look);
    widget.setItem(COSName.AP, appearance);
    int key = tags.nextKey();
    widget.setInt(COSName.STRUCT_PARENT, key);
    Tags.Element element = parent.child("Form");
    element.add(spot.page().dictionary(), widget);
    tags.owner(key, element.dictionary());
    spot.page().addField(widget);
    fields.add(widget);
    return widget;
  }

  private COSArray rectangle(Spot spot) {
    double bottom = paperHeight - spot.y() - spot.height();
    return numbers(spot.x(), bottom, spot.x() + spot.width(), bottom + spot.height());
  }

  private static COSArray numbers(double... values) {
    var array = new COSArray();
    for (double value : values) {
      array.add(new COSFloat((float) (Math.round(value * 100) / 100.0)));
    }
    return array;
  }

  /** An appearance; equal ones are written once. */
  private COSStream look(Spot spot, String kind, String content) {
    String key = Math.round(spot.width() * 100) + " " + Math.round(spot.height() * 100) + kind;
    return looks.computeIfAbsent(
        key,
        none -> {
          COSStream stream = document.getDocument().createCOSStream();
          stream.setItem(COSName.TYPE, COSName.XOBJECT);
          stream.setItem(COSName.SUBTYPE, COSName.FORM);
          stream.setItem(COSName.BBOX, numbers(0, 0, spot.width(), spot.height()));
          var resources = new PDResources();
          if (!kind.startsWith("box")) {
            resources.put(COSName.getPDFName(font.name()), font.font());
          }
          stream.setItem(COSName.RESOURCES, resources);
          try (var out = stream.createOutputStream()) {
            out.write(content.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          return stream;
        });
  }

  /** Hangs the form into the document, with a font that people can type in. */
  void finish(PDDocumentCatalog catalog) throws IOException {
    if (fields.size() == 0) {
      return;
    }
    var form = new PDAcroForm(document);
    form.getCOSObject().setItem(COSName.FIELDS, fields);
    var resources = new PDResources();
    resources.put(TYPING, typingFont());
    form.setDefaultResources(resources);
    form.setDefaultAppearance("/" + TYPING.getName() + " 9 Tf 0 g");
    catalog.setAcroForm(form);
  }

  private PDTrueTypeFont typingFont() throws IOException {
    var subsetter = new TTFSubsetter(font.face().font());
    WinAnsiEncoding.INSTANCE.getCodeToNameMap().values().stream()
        .map(org.apache.pdfbox.pdmodel.font.encoding.GlyphList.getAdobeGlyphList()::toUnicode)
        .filter(unicode -> unicode != null && unicode.length() == 1)
        .forEach(unicode -> subsetter.add(unicode.charAt(0)));
    subsetter.setPrefix("TYPING+");
    var bytes = new ByteArrayOutputStream();
    subsetter.writeToStream(bytes);
    return PDTrueTypeFont.load(
        document, new ByteArrayInputStream(bytes.toByteArray()), WinAnsiEncoding.INSTANCE);
  }
}
